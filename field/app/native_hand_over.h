// Sending and receiving jobs on a device that has folders and files.
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>

#include "engine/trim/practice.h"
#include "field/app/handing_over.h"
#include "field/store/disk.h"

namespace hemline {

/// `jobs_folder`: where new jobs go. `tablet`: this device's number.
HandOver native_hand_over(const std::filesystem::path& jobs_folder, std::uint64_t tablet,
                          const Practice& practice, const std::function<std::int64_t()>& wall_ms,
                          const std::shared_ptr<Disk>& disk = std::make_shared<Disk>());

}  // namespace hemline
