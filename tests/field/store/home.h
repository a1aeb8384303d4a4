// A separate home for a test, for what a device saves.
#pragma once

#include <filesystem>
#include <fstream>
#include <string>

#include "tests/field/store/temporary_folder.h"

namespace hemline {

/// XDG_DATA_HOME points into a separate folder while this lives.
struct Home {
    TemporaryFolder folder;
    Setting data{"XDG_DATA_HOME", folder.path().string()};
    [[nodiscard]] std::filesystem::path file(const std::string& name) const {
        return folder.path() / "hemline" / name;
    }
    void write(const std::string& name, const std::string& text) const {
        std::filesystem::create_directories(folder.path() / "hemline");
        std::ofstream(file(name)) << text;
    }
};

}  // namespace hemline
