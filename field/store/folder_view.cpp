#include "field/store/folder_view.h"

#include <algorithm>
#include <cstdlib>
#include <system_error>

#include <unistd.h>

namespace hemline {

namespace {

namespace fs = std::filesystem;

std::vector<fs::path> folders_in(const fs::path& folder) {
    std::vector<fs::path> found;
    std::error_code error;
    for (fs::directory_iterator entry(folder, error), end; !error && entry != end;
         entry.increment(error)) {
        std::error_code unknown;
        if (entry->path().filename().string().front() != '.' && entry->is_directory(unknown)) {
            found.push_back(entry->path());
        }
    }
    std::sort(found.begin(), found.end());
    return found;
}

}  // namespace

FolderView look_into(const fs::path& folder) {
    FolderView view{folder, folders_in(folder), ::access(folder.c_str(), W_OK | X_OK) == 0, {}};
    std::error_code error;
    if (const fs::space_info room = fs::space(folder, error); !error) {
        view.free_bytes = room.available;
    }
    return view;
}

std::vector<fs::path> places_here() {
    std::vector<fs::path> places;
    std::error_code error;
    const char* const home = std::getenv("HOME");
    if (home != nullptr && fs::is_directory(home, error)) {
        places.emplace_back(home);
    }
    // Where desktops mount sticks: /media/USER/NAME, /run/media/USER/NAME, or /mnt/NAME by hand.
    for (const fs::path base : {"/media", "/run/media"}) {
        for (const fs::path& user : folders_in(base)) {
            const std::vector<fs::path> sticks = folders_in(user);
            places.insert(places.end(), sticks.begin(), sticks.end());
        }
    }
    const std::vector<fs::path> by_hand = folders_in("/mnt");
    places.insert(places.end(), by_hand.begin(), by_hand.end());
    return places;
}

}  // namespace hemline
