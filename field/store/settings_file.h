// A small file of what this device was told: its folders, its screen.
#pragma once

#include <optional>
#include <string>

#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// Writes hemline_folder()/NAME anew. `is_readable`: whether this program makes sense of the one
/// that is there; otherwise that one is moved to NAME-unread first, so that nothing in it is lost.
/// Problem: what was there is there.
std::optional<Problem> write_settings(Disk& disk, const std::string& name, const std::string& text,
                                      bool is_readable);

}  // namespace hemline
