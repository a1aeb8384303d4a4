#include "field/app/crew.h"

#include <algorithm>
#include <cerrno>
#include <map>
#include <system_error>

#include <fcntl.h>
#include <poll.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/crew_watch.h"
#include "field/store/disk_problem.h"
#include "field/store/listing.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

/// A folder on another machine does not report changes, so it is also looked at from time to time.
constexpr int look_again_ms = 60'000;
/// A folder that is not there, or cannot be watched or written, is tried more often.
constexpr int try_again_ms = 10'000;

/// The crew folder, and the job's folders in it once they exist.
class Watches {
  public:
    explicit Watches(const fs::path& crew) { watches_.emplace(crew, crew); }
    /// True when one of the job's folders is watched only from now on, so what came before must be
    /// read.
    bool add(const std::vector<fs::path>& job) {
        bool any = false;
        for (const fs::path& folder : job) {
            std::error_code error;
            any =
                (fs::is_directory(folder, error) && watches_.emplace(folder, folder).second) || any;
        }
        return any;
    }
    /// Sleeps until something changed, the bell rings, or it is time to look again.
    void wait(int bell, bool all_well) {
        std::vector<pollfd> files = {{bell, POLLIN, 0}};
        bool watched = true;
        for (const auto& [folder, watch] : watches_) {
            files.push_back({watch.file(), POLLIN, 0});
            watched = watched && watch.file() >= 0;
        }
        ::poll(files.data(), files.size(), all_well && watched ? look_again_ms : try_again_ms);
        for (char rung[64]; ::read(bell, rung, sizeof rung) > 0;) {
        }
        for (auto& [folder, watch] : watches_) {
            static_cast<void>(watch.changed());
        }
    }

  private:
    std::map<fs::path, CrewWatch> watches_;
};

}  // namespace

void Crew::start(CrewJob job, std::shared_ptr<Disk> disk, std::vector<Event> events) {
    stop();
    folder_ = std::make_unique<CrewFolder>(job.crew, job.job, disk);
    job_ = std::move(job);
    disk_ = std::move(disk);
    events_ = std::move(events);
    last_given_ = 0;
    for (const Event& event : events_) {
        if (event.id.device == job_->writer) {
            last_given_ = std::max(last_given_, event.id.sequence);
        }
    }
    problem_.reset();
    news_.reset();
    closing_ = false;
    if (!wake_) {
        carry();
    } else if (::pipe2(bell_, O_NONBLOCK | O_CLOEXEC) == 0) {
        busy_ = true;
        thread_ = std::thread([this] { run(); });
    } else {
        news_ = CrewNews{{}, 0, false, disk_problem(phrase("watched"), job_->crew, errno)};
    }
}

void Crew::give(std::span<const Event> events) {
    std::vector<Event> fresh;
    for (auto event = events.rbegin(); event != events.rend(); ++event) {
        if (event->id.device == job_->writer) {
            if (event->id.sequence <= last_given_) {
                break;
            }
            fresh.push_back(*event);
        }
    }
    if (fresh.empty()) {
        return;
    }
    last_given_ = fresh.front().id.sequence;
    {
        const std::scoped_lock hold(lock_);
        given_.insert(given_.end(), fresh.rbegin(), fresh.rend());
        busy_ = thread_.joinable();
    }
    if (!wake_) {
        carry();
    } else if (bell_[1] >= 0) {
        static_cast<void>(::write(bell_[1], "!", 1));
    }
}

std::optional<CrewNews> Crew::news() {
    const std::scoped_lock hold(lock_);
    return std::exchange(news_, std::nullopt);
}

void Crew::settle() {
    std::unique_lock hold(lock_);
    carried_.wait(hold, [this] { return !busy_; });
}

void Crew::stop() {
    if (thread_.joinable()) {
        {
            const std::scoped_lock hold(lock_);
            closing_ = true;
        }
        static_cast<void>(::write(bell_[1], "!", 1));
        thread_.join();
    }
    for (int& end : bell_) {
        if (end >= 0) {
            ::close(end);
        }
        end = -1;
    }
    busy_ = false;
    job_.reset();
    folder_.reset();
    news_.reset();
}

/// Carries what there is; false when no more is to be carried. Does not call `wake`.
bool Crew::carry() {
    {
        const std::scoped_lock hold(lock_);
        events_.insert(events_.end(), given_.begin(), given_.end());
        given_.clear();
    }
    const Result<There> there = what_is(job_->crew);
    Carried carried;
    if (there && *there == There::folder) {
        carried = folder_->carry(events_, job_->writer);
    } else if (!there) {
        carried.problem = there.problem();
    } else {
        carried.problem =
            Problem{say("The crew folder {1} is not there.", shown(job_->crew)),
                    say("Plug it in or choose another; what is saved here goes out once it is "
                        "back.")};
    }
    events_.insert(events_.end(), carried.taken_in.begin(), carried.taken_in.end());
    const std::scoped_lock hold(lock_);
    CrewNews news = news_.value_or(CrewNews{});
    const bool is_news = carried.problem != problem_ || !carried.taken_in.empty() ||
                         carried.given_out > 0 || carried.number_used_elsewhere;
    problem_ = carried.problem;
    news.problem = carried.problem;
    news.taken_in.insert(news.taken_in.end(), carried.taken_in.begin(), carried.taken_in.end());
    news.given_out += carried.given_out;
    news.number_used_elsewhere = carried.number_used_elsewhere;
    if (is_news) {
        news_ = std::move(news);
    }
    return !carried.number_used_elsewhere;
}

void Crew::run() {
    std::optional<Watches> watches;
    bool goes_on = true;
    while (goes_on) {
        if (!watches) {
            watches.emplace(job_->crew);
        }
        goes_on = carry();
        if (goes_on && watches->add(folder_->folders())) {
            goes_on = carry();
        }
        bool is_news = false, closing = false, all_well = false;
        {
            const std::scoped_lock hold(lock_);
            busy_ = goes_on && !given_.empty();
            is_news = news_.has_value();
            closing = closing_;
            all_well = !problem_;
        }
        carried_.notify_all();
        if (closing) {
            return;
        }
        if (is_news) {
            wake_();
        }
        if (goes_on) {
            watches->wait(bell_[0], all_well);
        }
        if (!all_well) {
            watches.reset();  // it may be a different folder when it is back
        }
    }
}

}  // namespace hemline
