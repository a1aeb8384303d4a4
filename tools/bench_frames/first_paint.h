// How long a program takes from its start to its first picture.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

namespace hemline {

/// Milliseconds from starting `command` until `mark` is there, which the program writes right after
/// its first picture; the program is then ended. Nothing when it takes longer than 10 s.
std::optional<double> first_paint_ms(const std::vector<std::string>& command,
                                     const std::filesystem::path& mark);

/// Opens a bare SDL2 + Dear ImGui window with the library's letters and backends, draws a frame,
/// writes `mark` and waits to be ended. Exit code.
int run_bare_window(const std::filesystem::path& mark);

}  // namespace hemline
