# The tests, and a reader of certificates that knows nothing of the engine.
enable_testing()
find_package(doctest REQUIRED)
find_package(rapidcheck REQUIRED)

# Checks the command line's proofs from outside: links nothing of the engine either.
add_library(hemline_certificate STATIC tests/certificate/joint_file.cpp tests/certificate/joint_json.cpp
            tests/certificate/length.cpp tests/certificate/reader.cpp tests/certificate/table.cpp
            tests/certificate/task.cpp)
target_link_libraries(hemline_certificate PUBLIC hemline_joint_bound nlohmann_json::nlohmann_json)
add_executable(read_certificate tests/certificate/main.cpp)
target_link_libraries(read_certificate PRIVATE hemline_certificate)

file(GLOB_RECURSE ENGINE_TESTS CONFIGURE_DEPENDS tests/engine/*.cpp)
add_executable(engine_tests tests/main.cpp ${ENGINE_TESTS})
target_link_libraries(engine_tests PRIVATE hemline_engine hemline_store hemline_joint_bound doctest::doctest
                      rapidcheck z)

file(GLOB_RECURSE FIELD_TESTS CONFIGURE_DEPENDS tests/field/*.cpp)
add_executable(field_tests tests/main.cpp ${FIELD_TESTS})
target_link_libraries(field_tests PRIVATE hemline_shell hemline_glfw_events doctest::doctest rapidcheck
                      nlohmann_json::nlohmann_json)

file(GLOB CLI_TESTS CONFIGURE_DEPENDS tests/cli/*.cpp)
add_executable(cli_tests tests/main.cpp ${CLI_TESTS})
# The engine only writes and reads files for them; what is tested is the program that they run.
target_link_libraries(cli_tests PRIVATE hemline_certificate hemline_engine doctest::doctest)

# Every sentence is in every language's catalogue, and none that nobody says.
add_test(NAME words COMMAND ${CMAKE_SOURCE_DIR}/tools/words check)
# What a build says of itself.
add_test(NAME version_without_git COMMAND ${CMAKE_SOURCE_DIR}/tests/version/without_git)
# Every part of others that is built in or loaded is listed with its notice, under a license that is allowed.
if(NOT HEMLINE_SANITIZE)
    add_test(NAME notices COMMAND ${CMAKE_SOURCE_DIR}/tools/notices check ${CMAKE_BINARY_DIR})
    add_test(NAME notices_missing COMMAND ${CMAKE_SOURCE_DIR}/tests/notices/each_missing ${CMAKE_BINARY_DIR})
endif()

# The tests' own code need not be fast, and is most of what there is to compile: of -O0, -O1 and -Og the last compiles
# soonest. Cases of the suite "full"
# take minutes or programs that a newcomer need not have: a test of their own, which tools/test leaves out.
# It is doctest itself, which a header compiled before has left out.
set_source_files_properties(tests/main.cpp PROPERTIES SKIP_PRECOMPILE_HEADERS ON)
target_precompile_headers(engine_tests PRIVATE ${OFTEN} <doctest/doctest.h> <rapidcheck.h>)
target_precompile_headers(field_tests PRIVATE ${OFTEN} <filesystem> <doctest/doctest.h>)
target_precompile_headers(cli_tests PRIVATE ${OFTEN} <filesystem> <doctest/doctest.h> <nlohmann/json.hpp>)
foreach(tests engine field cli)
    target_compile_options(${tests}_tests PRIVATE -Og)
    add_test(NAME ${tests} COMMAND ${tests}_tests --test-suite-exclude=full)
    add_test(NAME ${tests}_full COMMAND ${tests}_tests --test-suite=full)
    set_tests_properties(${tests}_full PROPERTIES LABELS full)
    set_tests_properties(${tests} ${tests}_full PROPERTIES ENVIRONMENT
        "HEMLINE_ASSETS=${CMAKE_SOURCE_DIR}/assets;HEMLINE_CLI=$<TARGET_FILE:hemline-cli>;HEMLINE_SOURCE=${CMAKE_SOURCE_DIR}")
endforeach()
