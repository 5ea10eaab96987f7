# One line a command. `add_command(make-list "One line about it")` adds src/cli/commands/make_list.cpp,
# puts declare_make_list into the table of commands, and adds the tests that its help can be printed
# and that its cases in tests/cli/make-list hold. Its page docs/commands/make-list.md must be there.

set(command_group "")
set(completion_commands "")
set(man_commands "")
set(command_declarations "")
set(command_rows "")

# The task that the commands after it belong to, as the listing shows it.
macro(start_group title)
    set(command_group "${title}")
endmacro()

function(add_command name about)
    foreach(needed docs/commands/${name}.md tests/cli/${name})
        if(NOT EXISTS ${PROJECT_SOURCE_DIR}/${needed})
            message(FATAL_ERROR "The command '${name}' needs ${needed}")
        endif()
    endforeach()

    string(REPLACE "-" "_" identifier ${name})
    target_sources(counterpart_cli PRIVATE commands/${identifier}.cpp)
    string(APPEND command_declarations "void declare_${identifier}(const Syntax& syntax, Plan& plan);\n")
    string(APPEND command_rows
        "        {\"${name}\", \"${about}\", \"${command_group}\", commands::declare_${identifier}},\n")
    string(REPLACE "-" "\\-" man_name ${name})
    string(APPEND man_commands ".TP\n.B ${man_name}\n${about}.\n")
    string(APPEND completion_commands "${name} ")
    set(man_commands "${man_commands}" PARENT_SCOPE)
    set(completion_commands "${completion_commands}" PARENT_SCOPE)
    set(command_declarations "${command_declarations}" PARENT_SCOPE)
    set(command_rows "${command_rows}" PARENT_SCOPE)

    if(BUILD_TESTING)
        add_test(NAME help_${name} COMMAND ${CMAKE_COMMAND}
            -D PROGRAM=$<TARGET_FILE:counterpart> -D COMMAND=${name}
            -D PAGE=${PROJECT_SOURCE_DIR}/docs/commands/${name}.md
            -P ${PROJECT_SOURCE_DIR}/tests/cli/help.cmake)
        set_tests_properties(help_${name} PROPERTIES LABELS cli)
        add_test(NAME cli_${name} COMMAND counterpart_sessions
            $<TARGET_FILE:counterpart> ${PROJECT_SOURCE_DIR}/tests/cli/${name})
        set_tests_properties(cli_${name} PROPERTIES LABELS cli TIMEOUT 600)
    endif()
endfunction()

# Writes the table of all commands added so far and compiles it into the program; writes and installs
# the man page and the completion.
function(generate_command_table)
    configure_file(commands.cpp.in commands.cpp @ONLY)
    target_sources(counterpart_cli PRIVATE ${CMAKE_CURRENT_BINARY_DIR}/commands.cpp)
    configure_file(install/counterpart.1.in counterpart.1 @ONLY)
    configure_file(install/completion.bash.in counterpart.bash @ONLY)
    install(FILES ${CMAKE_CURRENT_BINARY_DIR}/counterpart.1 DESTINATION ${CMAKE_INSTALL_MANDIR}/man1)
    install(FILES ${CMAKE_CURRENT_BINARY_DIR}/counterpart.bash RENAME counterpart
        DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions)
endfunction()
