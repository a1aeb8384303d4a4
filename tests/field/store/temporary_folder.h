// A folder for a test, removed after it.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <string>
#include <system_error>

#include "engine/require.h"

namespace hemline {

class TemporaryFolder {
  public:
    TemporaryFolder() {
        std::string name = (std::filesystem::temp_directory_path() / "hemline-XXXXXX").string();
        require(::mkdtemp(name.data()) != nullptr, "a temporary folder can be made");
        path_ = name;
    }
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;
    ~TemporaryFolder() {
        std::error_code error;
        std::filesystem::remove_all(path_, error);
    }
    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    std::filesystem::path path_;
};

/// An environment variable set for a test's length, and then as it was.
class Setting {
  public:
    Setting(const char* name, const std::string& value) : name_(name) {
        const char* was = std::getenv(name);
        had_ = was != nullptr;
        was_ = had_ ? was : "";
        ::setenv(name, value.c_str(), 1);
    }
    Setting(const Setting&) = delete;
    Setting& operator=(const Setting&) = delete;
    ~Setting() {
        if (had_) {
            ::setenv(name_, was_.c_str(), 1);
        } else {
            ::unsetenv(name_);
        }
    }

  private:
    const char* name_;
    bool had_ = false;
    std::string was_;
};

}  // namespace hemline
