# The browser build, under Debian's Emscripten: the engine and its tests under Node.

# Debian's own include folder would hide Emscripten's: only what is wanted of it is staged.
set(STAGED ${CMAKE_BINARY_DIR}/include)
file(MAKE_DIRECTORY ${STAGED})
foreach(library cereal doctest nlohmann)
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
