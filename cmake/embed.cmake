# embed(TARGET NAME FILE): FILE byte for byte in TARGET, as std::string_view embedded::NAME.
function(embed target name file)
    set(source ${CMAKE_CURRENT_BINARY_DIR}/${name}.cpp)
    set(script ${PROJECT_SOURCE_DIR}/cmake/embed_file.cmake)
    add_custom_command(
        OUTPUT ${source}
        COMMAND ${CMAKE_COMMAND} -D IN=${file} -D OUT=${source} -D NAME=${name} -P ${script}
        DEPENDS ${file} ${script}
        VERBATIM)
    target_sources(${target} PRIVATE ${source})
endfunction()
