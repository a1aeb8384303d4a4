// A disk whose syncs wait until a test lets them go, and then succeed or fail as it says.
#pragma once

#include <cerrno>
#include <condition_variable>
#include <mutex>

#include "field/store/disk.h"

namespace hemline {

class SlowDisk : public Disk {
  public:
    int sync(int file) override {
        std::unique_lock hold(lock_);
        ++waiting_;
        changed_.notify_all();
        changed_.wait(hold, [this] { return !held_; });
        --waiting_;
        if (to_fail_ > 0) {
            --to_fail_;
            errno = EIO;
            return -1;
        }
        return Disk::sync(file);
    }
    /// From now on every sync waits.
    void hold() { set(true, 0); }
    /// All go on, and the next `failing` of them fail.
    void let_go(int failing = 0) { set(false, failing); }
    /// Waits until a sync is waiting: the event's bytes are written and not yet safe.
    void await_sync() {
        std::unique_lock hold(lock_);
        changed_.wait(hold, [this] { return waiting_ > 0; });
    }

  private:
    void set(bool held, int failing) {
        {
            const std::scoped_lock hold(lock_);
            held_ = held;
            to_fail_ = failing;
        }
        changed_.notify_all();
    }
    std::mutex lock_;
    std::condition_variable changed_;
    bool held_ = false;
    int to_fail_ = 0, waiting_ = 0;
};

}  // namespace hemline
