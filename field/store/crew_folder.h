// A crew folder: what tablets hand each other through any file synchroniser, as files that are
// written once and never changed, each by one tablet.
//
//   CREW/3f9c0000a0b1c2d3-1/                      one job, by the id of its JobStarted
//   └─ 77aa00000000beef-000012-1a2b3c4d.hemline   written by 77aa…, its 12th, CRC-32 1a2b3c4d:
//                                                 whole frames of the journal format
//
// A job's own folder, with its journals, stays outside it. Names end in none of what synchronisers
// pass over (.log, .wal, .tmp, "conflict").
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "engine/record/merge.h"
#include "engine/result.h"
#include "field/store/disk.h"

namespace hemline {

/// The jobs in a crew folder, by name. Problem: there is no such folder, or it cannot be listed.
Result<std::vector<std::string>> jobs_in_crew(const std::filesystem::path& crew);

/// All that the crew folder holds of one job, for a tablet that joins. Problem: it does not hold
/// its beginning yet, or cannot be listed.
Result<Journals> journals_in_crew(const std::filesystem::path& crew, const std::string& job);

/// What one carrying did.
struct Carried {
    std::vector<Event> taken_in;         ///< new here, saved in the job's folder
    std::size_t given_out = 0;           ///< events that the crew folder did not hold
    bool number_used_elsewhere = false;  ///< there are events under this tablet's number that it
                                         ///< never wrote: it was copied or put back from a backup
};

/// One job's way through a crew folder. Remembers what it has read, so that carrying again costs a
/// look at the folder.
class CrewFolder {
  public:
    CrewFolder(std::filesystem::path crew, std::filesystem::path job, std::shared_ptr<Disk> disk);

    /// Takes in what others gave out, into the job's journals of their devices, then gives out what
    /// the crew folder lacks. `events`: the job's, all saved. `writer`: the number this tablet
    /// writes under; events of that number are not taken in. Called under the job's lock. Problem:
    /// the job has no JobStarted yet, or a folder cannot be read or written.
    Result<Carried> carry(const std::vector<Event>& events, std::uint64_t writer);

    /// Where segments of this job lie, once it has been carried.
    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }

  private:
    std::optional<Problem> take_in(const std::filesystem::path& from, std::uint64_t writer,
                                   Carried& carried);
    std::optional<Problem> give_out(const std::vector<Event>& events, std::uint64_t writer,
                                    Carried& carried);
    std::optional<Problem> write_segment(const Bytes& segment, std::uint64_t writer);

    std::filesystem::path crew_, job_, folder_;
    std::shared_ptr<Disk> disk_;
    std::set<std::string> read_;                      ///< names of segments
    std::map<EventId, std::set<std::uint32_t>> has_;  ///< by the frame's CRC, in the crew folder
};

}  // namespace hemline
