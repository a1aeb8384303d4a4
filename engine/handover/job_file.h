// A job in a single file, to send by any means: a zip with every journal, pages that can be read
// without this program, and a manifest that says what must be there.
//
//   manifest.csv                     version,file,bytes,events,crc32: one row for each file below
//   journals/3f9c0000a0b1c2d3.journal
//   aside/damage-1a2b3c4d-812.bytes  stretches of damage, kept
//   job.html  events.csv  readings.csv
#pragma once

#include <map>
#include <string>

#include "engine/handover/zip.h"
#include "engine/record/merge.h"
#include "engine/words/result_declared.h"

namespace hemline {

constexpr int job_file_version = 1;
constexpr ZipLimits job_file_limits{std::size_t{20} << 20, std::size_t{32} << 20, 4096};

/// The journals with their pages ("job.html" → text). The same journals and pages give the same
/// bytes. What is certainly not an event is moved to aside/. Problem: larger than job_file_limits,
/// or more journals than that.
Result<Bytes> pack_job(const Journals& journals, const std::map<std::string, std::string>& pages);

/// The journals in a file, each checked: the manifest's counts and checksums, every frame, and that
/// every event of a known kind can be read. Problem says which entry, what is wrong, what to do;
/// a hostile file is refused within a second and 64 MB.
Result<Journals> unpack_job(std::span<const std::uint8_t> file);

/// Name under which a stretch of damage is kept: its checksum, its size, and its number (1…) among
/// stretches with the same checksum and size.
std::string damage_name(std::span<const std::uint8_t> stretch, int number = 1);

}  // namespace hemline
