// Writes the tappable places of the current frame to a file, so that another program can find a
// control by its name.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "field/touch/ui.h"

namespace hemline {

/// [{"name","x","y","w","h"}] in window pixels. `density`: drawable pixels in a window pixel.
std::string targets_json(const std::vector<Target>& targets, float density);

/// Rewrites the file, completely or not at all, when the places have changed.
class TargetsFile {
  public:
    explicit TargetsFile(std::filesystem::path file) : file_(std::move(file)) {}
    /// False when it cannot be written.
    bool update(const std::vector<Target>& targets, float density);

  private:
    std::filesystem::path file_;
    std::string written_;
};

}  // namespace hemline
