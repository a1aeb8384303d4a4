# The browser build, under Debian's Emscripten: the engine and its tests under Node.

# Debian's own include folder would hide Emscripten's: only what is wanted of it is staged.
set(STAGED ${CMAKE_BINARY_DIR}/include)
file(MAKE_DIRECTORY ${STAGED})
foreach(library boost cereal doctest dxflib eigen3 nlohmann)
    file(CREATE_LINK /usr/include/${library} ${STAGED}/${library} SYMBOLIC)
endforeach()
target_include_directories(hemline_flags SYSTEM INTERFACE ${STAGED})
target_compile_options(hemline_flags INTERFACE -fexceptions)  # cereal throws
target_link_options(hemline_flags INTERFACE -fexceptions)

enable_testing()
file(GLOB_RECURSE ENGINE_TESTS CONFIGURE_DEPENDS tests/engine/*.cpp)
add_executable(engine_tests tests/main.cpp ${ENGINE_TESTS})
target_include_directories(engine_tests SYSTEM PRIVATE tests/node)
target_compile_options(engine_tests PRIVATE -O1)
target_link_libraries(engine_tests PRIVATE hemline_engine hemline_store)
target_link_options(engine_tests PRIVATE --pre-js ${CMAKE_SOURCE_DIR}/tests/node/environment.js -sENVIRONMENT=node -sWASM_ASYNC_COMPILATION=0
                    -sNODERAWFS=1 -sEXIT_RUNTIME=1 -sALLOW_MEMORY_GROWTH=1)
add_test(NAME engine_node COMMAND engine_tests)
set_tests_properties(engine_node PROPERTIES ENVIRONMENT
    "HEMLINE_ASSETS=${CMAKE_SOURCE_DIR}/assets;HEMLINE_SOURCE=${CMAKE_SOURCE_DIR}")

# ---- The program ---------------------------------------------------------------------------------
set(IMGUI ${CMAKE_SOURCE_DIR}/build/sources/imgui)  # tools/web_sources
add_library(imgui STATIC ${IMGUI}/imgui.cpp ${IMGUI}/imgui_draw.cpp ${IMGUI}/imgui_tables.cpp
            ${IMGUI}/imgui_widgets.cpp ${IMGUI}/backends/imgui_impl_opengl3.cpp)
target_include_directories(imgui SYSTEM PUBLIC ${IMGUI})
target_compile_options(imgui PRIVATE -Os)
target_compile_definitions(imgui PRIVATE IMGUI_IMPL_OPENGL_ES3 IMGUI_DISABLE_DEMO_WINDOWS
                           IMGUI_DISABLE_METRICS_WINDOW)

file(GLOB FIELD_SOURCES CONFIGURE_DEPENDS field/app/*.cpp field/screens/*.cpp field/touch/*.cpp
     field/theme/*.cpp)
add_library(hemline_field STATIC ${FIELD_SOURCES})
target_link_libraries(hemline_field PUBLIC hemline_store imgui)
target_compile_options(hemline_field PRIVATE -Os)
