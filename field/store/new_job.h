// Makes a new job with what is known of it from the start: completely, or not at all.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

/// Why a journal could not give the event back as it is: a name that is not text, or far too long.
std::optional<Problem> cannot_be_held(const Event& event);

/// Writes the facts, in order, as events of `by` on the tablet `device` into a folder that is not
/// there yet. Returns what is to be said about remains of an earlier try. Problem: nothing was
/// written.
Result<Text> write_new_job(Disk& disk, const std::filesystem::path& folder,
                           const std::vector<Fact>& facts, const std::string& by,
                           std::uint64_t device, std::int64_t wall_ms);

}  // namespace hemline
