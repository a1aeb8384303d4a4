# Benches, for tools/bench and, so that they go on compiling, tools/test all: the target `benches`.
file(GLOB BENCH_FRAMES_SOURCES CONFIGURE_DEPENDS tools/bench_frames/*.cpp)
add_executable(bench_frames EXCLUDE_FROM_ALL ${BENCH_FRAMES_SOURCES})
target_link_libraries(bench_frames PRIVATE hemline_shell)
file(GLOB BENCH_EVENT_SOURCES CONFIGURE_DEPENDS tools/bench_event/*.cpp)
add_executable(bench_event EXCLUDE_FROM_ALL ${BENCH_EVENT_SOURCES})
target_link_libraries(bench_event PRIVATE hemline_field)
file(GLOB BENCH_CUTTING_SOURCES CONFIGURE_DEPENDS tools/bench_cutting/*.cpp)
add_executable(bench_cutting EXCLUDE_FROM_ALL ${BENCH_CUTTING_SOURCES})
target_link_libraries(bench_cutting PRIVATE hemline_store hemline_joint_bound)

file(GLOB BENCH_JOURNAL_SOURCES CONFIGURE_DEPENDS tools/bench_journal/*.cpp)
add_executable(bench_journal EXCLUDE_FROM_ALL ${BENCH_JOURNAL_SOURCES})
target_link_libraries(bench_journal PRIVATE hemline_store sqlite3)

file(GLOB BENCH_BOUNDS_SOURCES CONFIGURE_DEPENDS tools/bench_bounds/*.cpp)
add_executable(bench_bounds EXCLUDE_FROM_ALL ${BENCH_BOUNDS_SOURCES})
target_link_libraries(bench_bounds PRIVATE hemline_store)

file(GLOB BENCH_ROOF_SOURCES CONFIGURE_DEPENDS tools/bench_roof/*.cpp)
add_executable(bench_roof EXCLUDE_FROM_ALL ${BENCH_ROOF_SOURCES})
target_link_libraries(bench_roof PRIVATE hemline_engine)

add_executable(bench_panels EXCLUDE_FROM_ALL tools/bench_panels/main.cpp)
target_link_libraries(bench_panels PRIVATE hemline_engine)

add_custom_target(benches DEPENDS bench_frames bench_event bench_cutting bench_journal bench_bounds bench_roof bench_panels)
