// Where the program was left on this device, in a small file: not part of a job.
//
//   …/hemline/left_off    what LeftOff prints
//
//   keep("a") keep("ab") keep("abc") ─▶ newest ─▶ its own thread: written whole, then 0.3 s of rest
#pragma once

#include <chrono>
#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <string>
#include <thread>

#include "engine/words/result.h"
#include "field/store/disk.h"

namespace hemline {

/// What the file says; empty where there is none. Problem: it cannot be read.
Result<std::string> read_left_off();

/// Writes it, whole or not at all. Problem: it is as it was.
std::optional<Problem> write_left_off(Disk& disk, const std::string& text);

constexpr std::chrono::milliseconds left_off_rest{300};

/// Writes the newest text on a separate thread, not more often than each `rest`.
class LeftOffKeeper {
  public:
    using Write = std::function<std::optional<Problem>(const std::string&)>;
    explicit LeftOffKeeper(Write write, std::chrono::milliseconds rest = left_off_rest);
    LeftOffKeeper(const LeftOffKeeper&) = delete;
    LeftOffKeeper& operator=(const LeftOffKeeper&) = delete;
    /// Waits until the newest text is written.
    ~LeftOffKeeper();

    /// Returns why an earlier text could not be written: once, until one was written again.
    std::optional<Problem> keep(std::string text);

  private:
    void run();

    const Write write_;
    const std::chrono::milliseconds rest_;
    std::mutex lock_;  ///< guards everything below except the thread
    std::condition_variable changed_;
    std::optional<std::string> newest_;  ///< not written yet
    std::optional<Problem> problem_;     ///< not told yet
    bool failing_ = false, closing_ = false;
    std::thread thread_;
};

}  // namespace hemline
