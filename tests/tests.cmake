# The tests, and a reader of certificates that knows nothing of the engine.
enable_testing()
find_package(doctest REQUIRED)
find_package(rapidcheck REQUIRED)

# Checks the command line's proofs from outside: links nothing of the engine either.
add_library(hemline_certificate STATIC tests/certificate/joint_file.cpp tests/certificate/joint_json.cpp
            tests/certificate/length.cpp tests/certificate/plan_print.cpp tests/certificate/pool_bound.cpp
            tests/certificate/reader.cpp tests/certificate/table.cpp tests/certificate/task.cpp)
compile_by_folder(hemline_certificate)
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

# Inner edges beside CGAL's straight skeleton: a program apart, never shipped, since CGAL is under the GPL and LGPL.
# `tools/test all` builds it by name: CGAL is of the section "skeleton" of tools/packages.txt.
find_path(CGAL_HEADERS CGAL/create_straight_skeleton_2.h)
if(CGAL_HEADERS AND NOT HEMLINE_SANITIZE)
    add_executable(skeleton_tests EXCLUDE_FROM_ALL tests/main.cpp tests/skeleton/skeleton_test.cpp)
    target_include_directories(skeleton_tests SYSTEM PRIVATE ${CGAL_HEADERS})
    target_link_libraries(skeleton_tests PRIVATE hemline_engine doctest::doctest gmp mpfr)
    target_compile_options(skeleton_tests PRIVATE -Wno-maybe-uninitialized)
    add_test(NAME skeleton COMMAND skeleton_tests)
    set_tests_properties(skeleton PROPERTIES LABELS full)
endif()

if(NOT HEMLINE_SANITIZE)
    # Every sentence is in every language's catalogue, and none that nobody says.
    add_test(NAME words COMMAND ${CMAKE_SOURCE_DIR}/tools/words check)
    # Every small fault's text still stands in its file.
    add_test(NAME faults_stand COMMAND ${CMAKE_SOURCE_DIR}/tools/mutants list)
    # What spoils files between tablets can do so to any file.
    add_test(NAME synchroniser COMMAND ${CMAKE_SOURCE_DIR}/tests/crew/every_deed)
    # What a build says about its version.
    add_test(NAME version_without_git COMMAND ${CMAKE_SOURCE_DIR}/tests/version/without_git)
    # Every part of others that is built in or loaded is listed with its notice, under a license that is allowed.
    add_test(NAME notices COMMAND ${CMAKE_SOURCE_DIR}/tools/notices check ${CMAKE_BINARY_DIR})
    add_test(NAME notices_missing COMMAND ${CMAKE_SOURCE_DIR}/tests/notices/each_missing ${CMAKE_BINARY_DIR})
endif()

# The code of the tests need not be fast, and is most of what there is to compile: of -O0, -O1 and -Og the last
# compiles soonest. Cases of the suite "full"
# take minutes or programs that a newcomer need not have: a separate test, which tools/test leaves out. It is
# doctest itself, which a header compiled before has left out.
set_source_files_properties(tests/main.cpp PROPERTIES SKIP_PRECOMPILE_HEADERS ON SKIP_UNITY_BUILD_INCLUSION ON)
target_precompile_headers(engine_tests PRIVATE ${OFTEN} <doctest/doctest.h> <rapidcheck.h>
    engine/words/text.h)
target_precompile_headers(field_tests PRIVATE ${OFTEN} <filesystem> <doctest/doctest.h>
    tests/field/app/journey.h)
target_precompile_headers(cli_tests PRIVATE ${OFTEN} <filesystem> <doctest/doctest.h> <nlohmann/json.hpp>)
# The suite "large" holds records of a hundred thousand things, every screen at every size and every way to cut a
# roof, which take an hour under the sanitizers: there tools/nightly runs them.
# The suite "long" works every card out, or a hundred roofs, or looks at every screen: five seconds and more each under
# the sanitizers, where it is large too.
set(LARGE large)
if(HEMLINE_SANITIZE)
    set(LARGE large,long)
    set(FEWER_CASES ";RC_PARAMS=max_success=30")  # a check of a law by chance: natively 100 cases
endif()
foreach(tests engine field cli)
    if(HEMLINE_SANITIZE)
        # Of a test's own code the address sanitizer is enough, and compiles sooner so.
        target_compile_options(${tests}_tests PRIVATE -O0 -fno-sanitize=undefined)
    else()
        target_compile_options(${tests}_tests PRIVATE -Og)
    endif()
    compile_by_folder(${tests}_tests)
endforeach()

# part_of_tests(PROGRAM NAME FILTER...): some cases of a program as a test; each has its own folder for what it writes.
function(part_of_tests program name)
    add_test(NAME ${name} COMMAND ${CMAKE_SOURCE_DIR}/tests/own_folder $<TARGET_FILE:${program}_tests> ${ARGN})
    set_tests_properties(${name} PROPERTIES ENVIRONMENT
        "HEMLINE_ASSETS=${CMAKE_SOURCE_DIR}/assets;HEMLINE_CLI=$<TARGET_FILE:hemline-cli>;HEMLINE_SOURCE=${CMAKE_SOURCE_DIR}${FEWER_CASES}")
endfunction()
# shared_tests(PROGRAM NAME FILTER SOURCES...): its cases as tests NAME_1, those of the sources (patterns, with commas
# between), NAME_2 …, and NAME_rest, all others; so that no core is idle while a long program ends.
function(shared_tests program name filter)
    set(parts)
    set(part 0)
    foreach(sources ${ARGN})
        math(EXPR part "${part} + 1")
        part_of_tests(${program} ${name}_${part} ${filter} --source-file=${sources})
        list(APPEND parts ${name}_${part})
    endforeach()
    string(REPLACE ";" "," sources "${ARGN}")
    part_of_tests(${program} ${name}_rest ${filter} --source-file-exclude=${sources})
    set(parts ${parts} ${name}_rest PARENT_SCOPE)
endfunction()

set(QUICK --test-suite-exclude=full,${LARGE})
shared_tests(engine engine ${QUICK} *tests/engine/work/*
    *tests/engine/record/*,*tests/engine/plan/*,*tests/engine/joint/*)
# What takes longest begins first.
set_tests_properties(${parts} PROPERTIES COST 1)
set(JOURNEYS *tests/field/app/)
shared_tests(field field ${QUICK}
    ${JOURNEYS}a*,${JOURNEYS}b*,${JOURNEYS}c*,${JOURNEYS}d*,${JOURNEYS}e*,${JOURNEYS}f*,${JOURNEYS}h*
    ${JOURNEYS}k*,${JOURNEYS}l*,${JOURNEYS}n*,${JOURNEYS}o*,${JOURNEYS}p*,${JOURNEYS}r*)
set_tests_properties(${parts} PROPERTIES COST 3)
shared_tests(cli cli ${QUICK} *tests/cli/m*,*tests/cli/p*,*tests/cli/s*)
set_tests_properties(${parts} PROPERTIES COST 2)
part_of_tests(engine engine_large --test-suite=${LARGE})
shared_tests(field field_large --test-suite=${LARGE} ${JOURNEYS}languages* ${JOURNEYS}keyboard*)
set_tests_properties(${parts} PROPERTIES COST 4)
part_of_tests(cli cli_large --test-suite=${LARGE})
set_tests_properties(engine_large ${parts} cli_large PROPERTIES LABELS large)
foreach(tests engine field cli)
    part_of_tests(${tests} ${tests}_full --test-suite=full)
    set_tests_properties(${tests}_full PROPERTIES LABELS full)
endforeach()
