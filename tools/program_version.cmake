# Writes which version and commit is built: at every build, not once when it is configured.
# usage: cmake -DVERSION=… -DOUT=FOLDER -P tools/program_version.cmake
# OUT/program_version.cpp is touched only where it changes; OUT/program_version.txt is "0.1.0-1a2b3c4d5e6f".
cmake_minimum_required(VERSION 3.25)
get_filename_component(SOURCE ${CMAKE_CURRENT_LIST_DIR} DIRECTORY)
set(COMMIT "")
set(CHANGED false)

# No commit of another repository that a tree without git happens to lie in.
execute_process(COMMAND git -C ${SOURCE} rev-parse --show-toplevel
    OUTPUT_VARIABLE top OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET RESULT_VARIABLE no_git)
if(no_git EQUAL 0)
    get_filename_component(top "${top}" REALPATH)
    get_filename_component(here "${SOURCE}" REALPATH)
    if(top STREQUAL here)
        execute_process(COMMAND git -C ${SOURCE} rev-parse --short=12 HEAD
            OUTPUT_VARIABLE COMMIT OUTPUT_STRIP_TRAILING_WHITESPACE ERROR_QUIET)
        execute_process(COMMAND git -C ${SOURCE} status --porcelain --untracked-files=no
            OUTPUT_VARIABLE differs ERROR_QUIET)
        if(NOT differs STREQUAL "")
            set(CHANGED true)
        endif()
    endif()
endif()

set(name ${VERSION})
if(COMMIT)
    string(APPEND name "-${COMMIT}")
endif()
if(CHANGED)
    string(APPEND name "-changed")
endif()
configure_file(${CMAKE_CURRENT_LIST_DIR}/program_version.cpp.in ${OUT}/program_version.cpp @ONLY)
file(CONFIGURE OUTPUT ${OUT}/program_version.txt CONTENT "@name@\n" @ONLY)
