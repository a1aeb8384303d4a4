// A new job with what is known of it from the start: there with all of it, or not there.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// Why a journal could not give the event back as it is: a name that is no text, or far too long.
std::optional<Problem> cannot_be_held(const Event& event);

/// Writes the facts, in order, as events of `by` on the tablet `device` into a folder that is not
/// there yet. Gives back what is to be said of an earlier try's remains. Problem: nothing was
/// written.
Result<Text> write_new_job(Disk& disk, const std::filesystem::path& folder,
                           const std::vector<Fact>& facts, const std::string& by,
                           std::uint64_t device, std::int64_t wall_ms);

}  // namespace hemline
