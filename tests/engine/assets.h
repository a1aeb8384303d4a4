// The files of assets/, read whole for a test.
#pragma once

#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

namespace hemline {

/// The text of assets/`name`: from HEMLINE_ASSETS, or from the folder the tests start in.
inline std::string asset(const std::string& name) {
    const char* folder = std::getenv("HEMLINE_ASSETS");
    std::ifstream file(std::string(folder != nullptr ? folder : "assets") + "/" + name,
                       std::ios::binary);
    REQUIRE_MESSAGE(file.good(), "no such asset: " << name);
    return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace hemline
