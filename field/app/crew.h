// Carries a job through the crew folder on a separate thread: what others sent comes in, and what
// is saved here goes out. It wakes the screen only when there is news.
//
//   saved here ─▶ give ──┐
//   the folder changed ──┴─▶ its own thread: CrewFolder::carry ─▶ news ─▶ wake
#pragma once

#include <atomic>
#include <condition_variable>
#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <mutex>
#include <optional>
#include <span>
#include <thread>
#include <vector>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/store/crew_folder.h"
#include "field/store/disk.h"

namespace hemline {

/// What was carried since the last call.
struct CrewNews {
    std::vector<Event> taken_in;  ///< new here and saved in the job's folder
    std::size_t given_out = 0;
    bool number_used_elsewhere = false;  ///< nothing more is carried until there is a new number
    std::optional<Problem> problem;      ///< the present problem; nothing: all is carried
};

/// What is carried, and where.
struct CrewJob {
    std::filesystem::path crew, job;
    std::uint64_t writer = 0;  ///< the number this tablet writes under in the job
};

class Crew {
  public:
    /// `wake` is called on its thread when news() has some. Empty: there is no thread, and give()
    /// itself carries.
    explicit Crew(std::function<void()> wake) : wake_(std::move(wake)) {}
    Crew(const Crew&) = delete;
    Crew& operator=(const Crew&) = delete;
    ~Crew() { stop(); }

    /// Carries this job from now on, under its lock; `events`: all of its events, saved.
    void start(CrewJob job, std::shared_ptr<Disk> disk, std::vector<Event> events);
    [[nodiscard]] bool is_started() const { return job_.has_value(); }
    /// All of the job's events, saved: those of this tablet that are new are sent out.
    void give(std::span<const Event> events);
    std::optional<CrewNews> news();
    /// Waits until what was given is carried.
    void settle();
    /// Ends after the carrying that is under way. News that was not fetched is dropped: it is on
    /// disk.
    void stop();

  private:
    void run();
    bool carry();

    const std::function<void()> wake_;
    std::optional<CrewJob> job_;
    std::shared_ptr<Disk> disk_;
    std::unique_ptr<CrewFolder> folder_;
    std::vector<Event> events_;     ///< everything known; used by the thread only
    std::uint32_t last_given_ = 0;  ///< sequence of this tablet
    int bell_[2] = {-1, -1};        ///< a pipe that wakes the thread
    std::mutex lock_;               ///< guards everything below except the thread
    std::condition_variable carried_;
    std::vector<Event> given_;
    std::optional<CrewNews> news_;
    std::optional<Problem> problem_;
    bool closing_ = false, busy_ = false;
    std::thread thread_;
};

}  // namespace hemline
