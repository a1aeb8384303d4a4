// Takes in what comes from a crew folder: frames that the job's folder lacks, gathered by device
// and appended to the journals of those devices.
#pragma once

#include <cstdint>
#include <filesystem>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <vector>

#include "engine/record/event_bytes.h"
#include "engine/record/merge.h"
#include "engine/words/result_declared.h"
#include "field/store/disk.h"

namespace hemline {

class CrewIntake {
  public:
    /// `writer`: the number this tablet writes under in the job; frames of that number are not
    /// taken in.
    CrewIntake(Disk& disk, std::filesystem::path job, std::uint64_t writer);

    /// The frames of a segment. Problem: the job's journals cannot be read.
    std::optional<Problem> add(std::span<const FrameAt> frames);
    /// Under this tablet's number there was a frame that it never wrote.
    [[nodiscard]] bool number_used_elsewhere() const { return number_used_elsewhere_; }
    /// Whether so much waits that it should be appended.
    [[nodiscard]] bool is_full() const;
    /// Appends and syncs what waits. Problem: some of it is not saved; taken_in() has what is
    /// saved.
    std::optional<Problem> append();
    /// Events that were appended.
    [[nodiscard]] const std::vector<Event>& taken_in() const { return taken_in_; }

  private:
    std::optional<Problem> look_at_journals();
    std::optional<Problem> append_to(const std::filesystem::path& journal, const Bytes& frames);

    Disk& disk_;
    std::filesystem::path job_;
    std::uint64_t writer_;
    bool looked_ = false;
    std::set<Bytes> here_;  ///< frames in the job's journals
    std::map<std::uint64_t, Bytes> waiting_;
    std::size_t waiting_bytes_ = 0;
    std::vector<Event> taken_in_;
    bool number_used_elsewhere_ = false;
};

}  // namespace hemline
