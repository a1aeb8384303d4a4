#include "field/store/saver.h"
#include "engine/words/result.h"

#include <utility>

namespace hemline {

Saver::Saver(OwnJournal& journal, std::function<void()> wake)
    : journal_(journal), wake_(std::move(wake)) {
    if (wake_) {
        thread_ = std::thread([this] { run(); });
    }
}

Saver::~Saver() {
    if (!thread_.joinable()) {
        return;
    }
    {
        const std::scoped_lock hold(lock_);
        closing_ = true;
    }
    changed_.notify_all();
    thread_.join();
}

void Saver::hand_over(std::uint32_t sequence, Bytes frame, Bytes strike) {
    {
        const std::scoped_lock hold(lock_);
        if (thread_.joinable() || failed_) {
            waiting_.push_back({sequence, std::move(frame), std::move(strike)});
        } else {
            returned_.push_back({sequence, journal_.save(frame, strike)});
            failed_ = returned_.back().not_saved.has_value();
        }
    }
    changed_.notify_all();
}

std::vector<Returned> Saver::returned() {
    const std::scoped_lock hold(lock_);
    if (failed_) {
        const Problem first = returned_.back().not_saved->problem;
        for (const Frame& frame : waiting_) {
            returned_.push_back({frame.sequence, NotSaved{first}});
        }
        waiting_.clear();
        failed_ = false;
    }
    return std::exchange(returned_, {});
}

void Saver::settle() {
    std::unique_lock hold(lock_);
    changed_.wait(hold, [this] { return idle(); });
}

void Saver::run() {
    std::unique_lock hold(lock_);
    for (;;) {
        changed_.wait(hold, [this] { return closing_ || !idle(); });
        if (idle()) {
            return;
        }
        const Frame frame = std::move(waiting_.front());
        waiting_.pop_front();
        writing_ = true;
        hold.unlock();
        std::optional<NotSaved> not_saved = journal_.save(frame.bytes, frame.strike);
        hold.lock();
        failed_ = not_saved.has_value();
        returned_.push_back({frame.sequence, std::move(not_saved)});
        hold.unlock();
        wake_();  // before it is idle, so that `wake` is not called after settling
        hold.lock();
        writing_ = false;
        changed_.notify_all();
    }
}

}  // namespace hemline
