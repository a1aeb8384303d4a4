#include "field/store/crew_watch.h"

#include <array>

#include <unistd.h>
#ifndef __EMSCRIPTEN__  // a browser has no folder that others write to
#include <sys/inotify.h>
#endif

namespace hemline {

#ifdef __EMSCRIPTEN__
CrewWatch::CrewWatch(const std::filesystem::path& /*folder*/) : file_(-1) {}
#else

CrewWatch::CrewWatch(const std::filesystem::path& folder)
    : file_(::inotify_init1(IN_NONBLOCK | IN_CLOEXEC)) {
    if (file_ >= 0 &&
        ::inotify_add_watch(file_, folder.c_str(), IN_CLOSE_WRITE | IN_MOVED_TO | IN_CREATE) < 0) {
        ::close(file_);
        file_ = -1;
    }
}
#endif

CrewWatch::~CrewWatch() {
    if (file_ >= 0) {
        ::close(file_);
    }
}

bool CrewWatch::changed() {
    if (file_ < 0) {
        return true;
    }
    bool any = false;
    std::array<char, 4096> events{};
    while (::read(file_, events.data(), events.size()) > 0) {
        any = true;
    }
    return any;
}

}  // namespace hemline
