#include "field/store/listing.h"

#include <algorithm>
#include <cerrno>
#include <memory>

#include <dirent.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

bool is_named(std::string_view name, std::string_view ending) {
    return name.size() > ending.size() && name.substr(name.size() - ending.size()) == ending;
}

}  // namespace

Result<There> what_is(const fs::path& path, Links links) {
    struct stat about {};
    const int failed =
        links == Links::followed ? ::stat(path.c_str(), &about) : ::lstat(path.c_str(), &about);
    if (failed != 0) {
        return errno == ENOENT || errno == ENOTDIR
                   ? Result<There>(There::nothing)
                   : Result<There>(disk_problem(phrase("looked at"), path, errno));
    }
    return S_ISREG(about.st_mode)   ? There::file
           : S_ISDIR(about.st_mode) ? There::folder
           : S_ISLNK(about.st_mode) ? There::link
                                    : There::other;
}

Result<std::vector<std::string>> names_in(const fs::path& folder, Links links) {
    const int flags = O_RDONLY | O_DIRECTORY | O_CLOEXEC | O_NONBLOCK;
    const int opened = ::open(folder.c_str(), flags | (links == Links::refused ? O_NOFOLLOW : 0));
    if (opened < 0) {
        return disk_problem(phrase("listed"), folder, errno);
    }
    const std::unique_ptr<DIR, int (*)(DIR*)> listed(::fdopendir(opened), &::closedir);
    if (!listed) {
        const int error = errno;
        ::close(opened);
        return disk_problem(phrase("listed"), folder, error);
    }
    std::vector<std::string> names;
    errno = 0;  // only errno tells whether readdir failed or reached the end
    while (const dirent* const entry = ::readdir(listed.get())) {
        const std::string name = entry->d_name;
        if (name != "." && name != "..") {
            names.push_back(name);
        }
        errno = 0;
    }
    if (errno != 0) {
        return disk_problem(phrase("listed"), folder, errno);
    }
    std::sort(names.begin(), names.end());
    return names;
}

Result<std::vector<fs::path>> files_in(const fs::path& folder,
                                       std::initializer_list<std::string_view> endings) {
    const Result<std::vector<std::string>> names = names_in(folder);
    if (!names) {
        return names.problem();
    }
    std::vector<fs::path> found;
    for (const std::string_view ending : endings) {
        for (const std::string& name : *names) {
            if (!is_named(name, ending)) {
                continue;
            }
            // A link counts here and is refused where it is opened, so that nothing is silently
            // skipped.
            const Result<There> there = what_is(folder / name, Links::refused);
            if (!there) {
                return there.problem();
            }
            if (*there != There::folder && *there != There::nothing) {
                found.push_back(folder / name);
            }
        }
    }
    return found;
}

Result<fs::path> free_name(const fs::path& folder, const std::string& stem,
                           const std::string& ending) {
    for (int number = 1;; ++number) {
        const std::string nth = number == 1 ? "" : "-" + std::to_string(number);
        const fs::path path = folder / (stem + nth + ending);
        const Result<There> there = what_is(path, Links::refused);
        if (!there) {
            return there.problem();
        }
        if (*there == There::nothing) {
            return path;
        }
    }
}

}  // namespace hemline
