// A disk that takes nothing more, for as long as a test wants it so.
#pragma once

#include <doctest/doctest.h>
#include <sys/resource.h>

#include <csignal>
#include <string_view>

#include "tests/field/app/journey.h"

namespace hemline {

/// While it lives, no file of this process can grow: write() fails with EFBIG (POSIX setrlimit),
/// for the superuser too.
class FullDisk {
  public:
    FullDisk() : was_signal_(std::signal(SIGXFSZ, SIG_IGN)) {
        REQUIRE(getrlimit(RLIMIT_FSIZE, &was_) == 0);
        rlimit none = was_;
        none.rlim_cur = 0;
        REQUIRE(setrlimit(RLIMIT_FSIZE, &none) == 0);
    }
    FullDisk(const FullDisk&) = delete;
    FullDisk& operator=(const FullDisk&) = delete;
    ~FullDisk() {
        setrlimit(RLIMIT_FSIZE, &was_);
        std::signal(SIGXFSZ, was_signal_);
    }

  private:
    rlimit was_{};
    void (*was_signal_)(int);
};

/// Taps while the disk is full.
inline void tap_in_vain(Journey& crew, std::string_view name) {
    const FullDisk full;
    crew.tap(name);
}

}  // namespace hemline
