// A crew folder: how tablets exchange jobs through any file synchronizer, as files that are written
// once, by one tablet, and never changed.
//
//   CREW/3f9c0000a0b1c2d3-1/                      one job, by the id of its JobStarted
//   └─ 77aa00000000beef-000012-1a2b3c4d.hemline   written by 77aa…, its 12th, CRC-32 1a2b3c4d:
//                                                 whole frames of the journal format
//
// The job's folder with its journals stays outside it. No name ends in anything that synchronizers
// skip (.log, .wal, .tmp, "conflict").
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
#include "engine/words/result.h"
#include "field/store/crew_intake.h"
#include "field/store/disk.h"
#include "field/store/segment_file.h"

namespace hemline {

/// The jobs in a crew folder, by name. Problem: there is no such folder, or it cannot be listed.
Result<std::vector<std::string>> jobs_in_crew(const std::filesystem::path& crew);

/// All that the crew folder holds of a job, for a tablet that joins. Problem: the job's beginning
/// is not there yet, or the folder cannot be listed.
Result<Journals> journals_in_crew(const std::filesystem::path& crew, const std::string& job);

/// What a carrying did; it may be incomplete.
struct Carried {
    std::vector<Event> taken_in;         ///< new here and saved in the job's folder
    std::size_t given_out = 0;           ///< events that a folder of the crew lacked
    bool number_used_elsewhere = false;  ///< there are events under this tablet's number that it
                                         ///< never wrote: it was copied or put back from a backup
    std::optional<Problem> problem;  ///< the job has no JobStarted yet, or a folder cannot be read
                                     ///< or written
};

/// Carries a job through a crew folder. Remembers what it has read, so that carrying again only
/// costs a listing of the folder. A job that was begun twice, separately, and then merged has a
/// folder there for each beginning; each gets what it lacks, so that whoever knows one of them gets
/// everything.
class CrewFolder {
  public:
    CrewFolder(std::filesystem::path crew, std::filesystem::path job, std::shared_ptr<Disk> disk);

    /// Takes in what others sent, into the journals of their devices, then sends out what the crew
    /// folder lacks. `events`: the job's, all saved. `writer`: the number this tablet writes under;
    /// if that turns out to be used elsewhere, nothing is sent out. Called under the job's lock.
    Carried carry(const std::vector<Event>& events, std::uint64_t writer);

    /// Folders with segments of this job, once it has been carried.
    [[nodiscard]] std::vector<std::filesystem::path> folders() const;

  private:
    /// What is known of the folder of a beginning.
    struct Shelf {
        struct Seen {
            FileStamp stamp;
            bool whole = false;
        };
        std::filesystem::path folder;
        std::map<std::string, Seen> seen;                  ///< segments
        std::map<EventId, std::set<std::uint32_t>> holds;  ///< by the frame's CRC
    };
    /// What is sent out, to each folder that lacks it.
    struct Giving {
        const std::vector<Event>& events;
        std::map<std::uint64_t, std::uint32_t> twice;  ///< first_numbers_twice()
        std::uint64_t writer = 0;
        std::set<std::size_t> given;  ///< by place in `events`
    };

    std::optional<Problem> take_in_all(std::set<EventId> starts, CrewIntake& intake);
    std::optional<Problem> take_in(Shelf& shelf, CrewIntake& intake);
    std::optional<Problem> give_out(Shelf& shelf, Giving& giving);
    std::optional<Problem> write_segment(Shelf& shelf, const Bytes& segment, std::uint64_t writer);

    std::filesystem::path crew_, job_;
    std::shared_ptr<Disk> disk_;
    std::map<EventId, Shelf> shelves_;  ///< by the beginning
};

}  // namespace hemline
