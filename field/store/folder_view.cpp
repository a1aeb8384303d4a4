#include "field/store/folder_view.h"

#include <cstdlib>
#include <string>
#include <system_error>

#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/listing.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

Result<std::vector<fs::path>> folders_in(const fs::path& folder) {
    const Result<std::vector<std::string>> names = names_in(folder);
    if (!names) {
        return names.problem();
    }
    std::vector<fs::path> found;
    for (const std::string& name : *names) {
        // A folder that does not answer is shown too: opening it says why.
        const Result<There> there = what_is(folder / name);
        if (name.front() != '.' && (!there || *there == There::folder)) {
            found.push_back(folder / name);
        }
    }
    return found;
}

void add_folders(StartingFolders& places, const fs::path& base) {
    const Result<There> there = what_is(base);
    if (there && *there == There::nothing) {
        return;
    }
    const auto inside = there ? folders_in(base) : Result<std::vector<fs::path>>(there.problem());
    if (inside) {
        places.folders.insert(places.folders.end(), inside->begin(), inside->end());
    } else {
        places.problem = inside.problem();
    }
}

}  // namespace

FolderView look_into(const fs::path& folder) {
    FolderView view{folder, {}, ::access(folder.c_str(), W_OK | X_OK) == 0, {}, {}};
    if (const auto inside = folders_in(folder)) {
        view.inside = *inside;
    } else {
        view.problem = inside.problem();
    }
    std::error_code error;
    if (const fs::space_info room = fs::space(folder, error); !error) {
        view.free_bytes = room.available;
    }
    return view;
}

StartingFolders starting_folders() {
    StartingFolders places;
    std::error_code error;
    const char* const home = std::getenv("HOME");
    if (home != nullptr && fs::is_directory(home, error)) {
        places.folders.emplace_back(home);
    }
    // Where desktops mount sticks: /media/USER/NAME, /run/media/USER/NAME, or /mnt/NAME by hand.
    StartingFolders users;
    for (const fs::path base : {"/media", "/run/media"}) {
        add_folders(users, base);
    }
    places.problem = users.problem;
    for (const fs::path& user : users.folders) {
        add_folders(places, user);
    }
    add_folders(places, "/mnt");
    return places;
}

}  // namespace hemline
