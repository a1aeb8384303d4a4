# The browser build, under Debian's Emscripten: the engine and its tests under Node, and the program.
include(tools/web_libraries.cmake)

# Debian's include folder would hide Emscripten's: only what is needed of it is staged.
set(STAGED ${CMAKE_BINARY_DIR}/include)
file(MAKE_DIRECTORY ${STAGED})
foreach(library boost cereal doctest eigen3 nlohmann)
    file(CREATE_LINK /usr/include/${library} ${STAGED}/${library} SYMBOLIC)
endforeach()
target_include_directories(hemline_flags SYSTEM INTERFACE ${STAGED})
# Exceptions only where they are caught: in the file that includes cereal, and in the tests
# (doctest).
set_source_files_properties(engine/record/event_bytes.cpp PROPERTIES COMPILE_OPTIONS -fexceptions)
target_link_options(hemline_flags INTERFACE -fexceptions)
# The planner is to be fast, all else of the engine small. Emscripten turns inlining off where -Os or -Oz stands on
# the line; turned on again, only what makes the code smaller is put in place. The planner's line has neither: what
# it puts in place is held small, which costs it nothing that can be measured.
set(SMALL -Oz -finline-functions)
target_compile_options(hemline_engine PRIVATE ${SMALL})
target_compile_options(hemline_planner PRIVATE -fno-unroll-loops "SHELL:-mllvm -inline-threshold=12")
file(GLOB ONCE_A_PLAN CONFIGURE_DEPENDS engine/plan/*.cpp engine/dividing/*.cpp)  # what searches lies in cutting and joint
set_source_files_properties(${ONCE_A_PLAN} PROPERTIES COMPILE_OPTIONS "${SMALL}")

set(NODE_WITHOUT_ENVIRONMENT -sENVIRONMENT=node -sWASM_ASYNC_COMPILATION=0 -sNODERAWFS=1 -sEXIT_RUNTIME=1
    -sALLOW_MEMORY_GROWTH=1)
set(NODE_PROGRAM --pre-js ${CMAKE_SOURCE_DIR}/tests/node/environment.js ${NODE_WITHOUT_ENVIRONMENT})

enable_testing()
file(GLOB_RECURSE ENGINE_TESTS CONFIGURE_DEPENDS tests/engine/*.cpp)
add_executable(engine_tests tests/main.cpp ${ENGINE_TESTS})
target_include_directories(engine_tests SYSTEM PRIVATE tests/node)
target_compile_options(engine_tests PRIVATE -O1 -fexceptions)
target_link_libraries(engine_tests PRIVATE hemline_engine hemline_store hemline_joint_bound z)
target_link_options(engine_tests PRIVATE ${NODE_PROGRAM} -O1)  # what runs once need not be made smaller for minutes
target_precompile_headers(engine_tests PRIVATE ${OFTEN} <doctest/doctest.h> engine/words/result.h)
set_target_properties(engine_tests PROPERTIES DISABLE_PRECOMPILE_HEADERS OFF)
set_source_files_properties(tests/main.cpp PROPERTIES SKIP_PRECOMPILE_HEADERS ON SKIP_UNITY_BUILD_INCLUSION ON)
compile_by_folder(engine_tests)
add_test(NAME engine_node COMMAND engine_tests --test-suite-exclude=large,long)
# tools/bench cutting_node
file(GLOB BENCH_CUTTING_SOURCES CONFIGURE_DEPENDS tools/bench_cutting/*.cpp)
add_executable(bench_cutting EXCLUDE_FROM_ALL ${BENCH_CUTTING_SOURCES})
target_link_libraries(bench_cutting PRIVATE hemline_store hemline_joint_bound)
target_link_options(bench_cutting PRIVATE ${NODE_PROGRAM})
# tools/bench roof_node, which asks for no variable of the environment: then Emscripten has none
add_executable(bench_roof tools/bench_roof/main.cpp)
target_link_libraries(bench_roof PRIVATE hemline_engine)
target_link_options(bench_roof PRIVATE ${NODE_WITHOUT_ENVIRONMENT})
set_tests_properties(engine_node PROPERTIES ENVIRONMENT
    "HEMLINE_ASSETS=${CMAKE_SOURCE_DIR}/assets;HEMLINE_SOURCE=${CMAKE_SOURCE_DIR}")

# ---- The program ---------------------------------------------------------------------------------
file(GLOB_RECURSE FIELD_SOURCES CONFIGURE_DEPENDS field/app/*.cpp field/update/*.cpp field/state/*.cpp
     field/screens/*.cpp field/touch/*.cpp field/theme/*.cpp)
list(REMOVE_ITEM FIELD_SOURCES ${CMAKE_SOURCE_DIR}/field/app/plan_search.cpp)
add_library(hemline_field STATIC ${FIELD_SOURCES})
target_link_libraries(hemline_field PUBLIC hemline_store imgui)
target_compile_options(hemline_field PRIVATE ${SMALL})
target_compile_options(hemline_store PRIVATE ${SMALL})
compile_by_folder(hemline_field)

# Files of Debian's that the program carries: B612 cut down to the letters that it loads.
set(CARRIED ${CMAKE_BINARY_DIR}/carried)
foreach(face Regular Bold)
    add_custom_command(OUTPUT ${CARRIED}/fonts/B612-${face}.otf
        COMMAND ${CMAKE_COMMAND} -E make_directory ${CARRIED}/fonts
        COMMAND pyftsubset /usr/share/fonts/opentype/b612/B612-${face}.otf --unicodes-file=${LETTERS_FILE}
                --layout-features= --no-hinting --desubroutinize --output-file=${CARRIED}/fonts/B612-${face}.otf
        DEPENDS ${LETTERS_FILE} VERBATIM)
endforeach()
file(GLOB_RECURSE ASSETS CONFIGURE_DEPENDS assets/*.csv assets/*.po assets/*.txt)
# The assets, without the English of the catalogues, and without the words of what is in no screen yet, or is said by
# the page itself or other shells: 14 KB less to load.
add_custom_command(OUTPUT ${CARRIED}/assets.made
    COMMAND ${CMAKE_COMMAND} -E rm -rf ${CARRIED}/assets
    COMMAND ${CMAKE_COMMAND} -E copy_directory ${CMAKE_SOURCE_DIR}/assets ${CARRIED}/assets
    COMMAND ${CMAKE_SOURCE_DIR}/tools/words short ${CARRIED}/assets/words field/shell/web/loading.js
            field/shell/sdl_ field/shell/glfw_ field/shell/main.cpp
    COMMAND ${CMAKE_COMMAND} -E touch ${CARRIED}/assets.made
    DEPENDS ${ASSETS} ${CMAKE_SOURCE_DIR}/tools/words VERBATIM)

# What is served: build/web and nothing that need not be.
set(WEB ${CMAKE_SOURCE_DIR}/build/web)
file(GLOB PAGE_SOURCES CONFIGURE_DEPENDS field/shell/web/page_*.cpp field/shell/web/choices_text.cpp)
add_executable(hemline ${PAGE_SOURCES} field/shell/stage.cpp)
# The page does saving and searching: page_saver.cpp and page_search.cpp, in place of the files that have threads.
target_link_libraries(hemline PRIVATE hemline_field)
target_compile_options(hemline PRIVATE ${SMALL})
target_link_options(hemline PRIVATE -Oz -sENVIRONMENT=web,worker -sMIN_WEBGL_VERSION=2
    -sMAX_WEBGL_VERSION=2 -sALLOW_MEMORY_GROWTH=1 -sASSERTIONS=0 -sINVOKE_RUN=1 -sEXIT_RUNTIME=0
    -sEXPORTED_RUNTIME_METHODS=['FS','ENV','stringToUTF8','UTF8ToString']
    -sEXPORTED_FUNCTIONS=['_main','_malloc','_free']
    -Wl,--print-map  # what is in it: for tools/notices and tools/web_sizes
    "SHELL:--preload-file ${CARRIED}/assets@/assets"
    "SHELL:--preload-file ${CARRIED}/fonts@/fonts")
set_target_properties(hemline PROPERTIES RULE_LAUNCH_LINK
    "${CMAKE_SOURCE_DIR}/tools/web_link ${CMAKE_BINARY_DIR}/hemline.map" LINK_DEPENDS
    "${CARRIED}/assets.made;${CARRIED}/fonts/B612-Regular.otf;${CARRIED}/fonts/B612-Bold.otf")
add_custom_target(carried DEPENDS ${CARRIED}/assets.made ${CARRIED}/fonts/B612-Regular.otf ${CARRIED}/fonts/B612-Bold.otf)
add_dependencies(hemline carried)

file(CREATE_LINK /usr/include/stb ${STAGED}/stb SYMBOLIC)
add_executable(draw_icon field/shell/web/draw_icon.cpp)
target_include_directories(draw_icon SYSTEM PRIVATE ${STAGED}/stb)
target_link_options(draw_icon PRIVATE -sENVIRONMENT=node -sWASM_ASYNC_COMPILATION=0 -sNODERAWFS=1 -sEXIT_RUNTIME=1)
add_test(NAME notices_web COMMAND ${CMAKE_SOURCE_DIR}/tools/notices check ${CMAKE_BINARY_DIR})
add_test(NAME notices_missing_web COMMAND ${CMAKE_SOURCE_DIR}/tests/notices/each_missing ${CMAKE_BINARY_DIR})
add_custom_target(site ALL
    COMMAND ${CMAKE_SOURCE_DIR}/tools/web_site ${CMAKE_BINARY_DIR} ${WEB}
    DEPENDS hemline draw_icon VERBATIM)
