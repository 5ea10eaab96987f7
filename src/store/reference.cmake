# The reference tables: a tool of the build reads schema/reference, refuses what is wrong, and makes
# the database image that the program carries.
add_library(counterpart_compile STATIC compile_csv.cpp compile_image.cpp compile_table.cpp)
target_link_libraries(counterpart_compile
    PUBLIC counterpart_length PRIVATE SQLiteCpp SQLite::SQLite3 fmt::fmt)
compile_headers(counterpart_compile <SQLiteCpp/SQLiteCpp.h> <fmt/format.h>)
add_executable(compile_reference compile_reference.cpp)
target_link_libraries(compile_reference PRIVATE counterpart_compile fmt::fmt)

set(reference_folder ${PROJECT_SOURCE_DIR}/schema/reference)
set(reference_image ${CMAKE_CURRENT_BINARY_DIR}/reference.db)
set(reference_tables
    clearance confidence counterbore counterbore_head counterbore_rule depth_addition drill
    drill_limit feed form form_word grade head material nut_factor oversize pilot practice
    restriction series series_word set_screw size source thread tool torque washer washer_series)
list(TRANSFORM reference_tables PREPEND ${reference_folder}/ OUTPUT_VARIABLE reference_files)
list(TRANSFORM reference_files APPEND .csv)

add_custom_command(
    OUTPUT ${reference_image}
    COMMAND compile_reference ${reference_folder} ${reference_image}
    DEPENDS compile_reference ${reference_files}
        ${reference_folder}/reference.sql ${reference_folder}/derive.sql ${reference_folder}/check.sql
    COMMENT "Compiling the reference tables"
    VERBATIM)

target_sources(counterpart_store PRIVATE
    reference.cpp reference_sizes.cpp reference_tools.cpp reference_work.cpp reference_image.cpp
    ${reference_image})
set_source_files_properties(reference_image.cpp PROPERTIES
    COMPILE_DEFINITIONS COUNTERPART_REFERENCE_IMAGE="${reference_image}"
    OBJECT_DEPENDS ${reference_image})
