# `PROGRAM COMMAND --help` exits with 0, prints a usage and nothing on stderr, and the command's
# page shows the same usage.
execute_process(COMMAND ${PROGRAM} ${COMMAND} --help
    OUTPUT_VARIABLE out ERROR_VARIABLE err RESULT_VARIABLE code)
if(NOT code EQUAL 0 OR NOT err STREQUAL "")
    message(FATAL_ERROR "exit ${code}, stderr: ${err}")
endif()
if(NOT out MATCHES "^(Usage: counterpart ${COMMAND}[^\n]*)\n")
    message(FATAL_ERROR "no usage line in:\n${out}")
endif()
set(usage "${CMAKE_MATCH_1}")
file(READ ${PAGE} page)
string(FIND "${page}" "${usage}\n" at)
if(at EQUAL -1)
    message(FATAL_ERROR "${PAGE} does not show the line\n${usage}")
endif()
