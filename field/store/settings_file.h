// A small settings file of this device: its folders, its screen.
#pragma once

#include <optional>
#include <string>

#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// Writes hemline_folder()/NAME. `is_readable`: whether this program understands the present file;
/// otherwise that file is moved to NAME-unread first, so that nothing in it is lost. Problem: the
/// old file is still there.
std::optional<Problem> write_settings(Disk& disk, const std::string& name, const std::string& text,
                                      bool is_readable);

}  // namespace hemline
