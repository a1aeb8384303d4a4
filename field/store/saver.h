// Saves apart from the thread that draws: frames are handed over in order, and come back saved or
// not saved.
//
//   hand_over ─▶ │ frame │ frame │ ─▶ OwnJournal: write, sync ─▶ │ saved │ not saved │ ─▶ returned
//                        waiting            its own thread                         └─▶ wake
//
// Frames that wait behind a frame that was not saved may depend on it, so they come back not saved
// too. Until the failure has been fetched, only its strike is written.
#pragma once

#include <condition_variable>
#include <cstdint>
#include <deque>
#include <functional>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

#include "engine/record/bytes.h"
#include "field/store/own_journal.h"

namespace hemline {

/// A frame that is no longer under way.
struct Returned {
    std::uint32_t sequence = 0;
    std::optional<NotSaved> not_saved;  ///< nothing: it is on the disk
};

class Saver {
  public:
    /// `wake` is called on the saver's thread after each save; empty: there is no thread, and
    /// hand_over() itself writes and syncs.
    Saver(OwnJournal& journal, std::function<void()> wake);
    Saver(const Saver&) = delete;
    Saver& operator=(const Saver&) = delete;
    /// Waits until all that was handed over is saved or has failed.
    ~Saver();

    /// `strike`: as for OwnJournal::save().
    void hand_over(std::uint32_t sequence, Bytes frame, Bytes strike);
    /// What has come back since the last call, in the order handed over.
    std::vector<Returned> returned();
    /// Waits until nothing is under way.
    void settle();
    /// Only in a browser, where the page keeps the bytes: the page's answer, nothing when they are
    /// kept.
    void answered(std::uint32_t sequence, const std::optional<Problem>& why_not);

  private:
    struct Frame {
        std::uint32_t sequence = 0;
        Bytes bytes, strike;
    };
    void run();
    [[nodiscard]] bool idle() const { return !writing_ && (waiting_.empty() || failed_); }

    OwnJournal& journal_;
    const std::function<void()> wake_;
    std::mutex lock_;  ///< guards everything below except the thread
    std::condition_variable changed_;
    std::deque<Frame> waiting_;
    std::vector<Returned> returned_;
    bool writing_ = false;
    bool failed_ = false;                    ///< and not fetched yet
    [[maybe_unused]] bool closing_ = false;  ///< not in a browser
    std::thread thread_;
};

}  // namespace hemline
