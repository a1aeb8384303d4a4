#include "field/store/settings_file.h"

#include <cerrno>
#include <filesystem>
#include <system_error>

#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/listing.h"
#include "field/store/whole_file.h"

namespace hemline {

std::optional<Problem> write_settings(Disk& disk, const std::string& name, const std::string& text,
                                      bool is_readable) {
    const Result<std::filesystem::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    std::error_code error;
    std::filesystem::create_directories(*home, error);
    if (error) {
        return disk_problem(phrase("created"), *home, error.value());
    }
    const std::filesystem::path file = *home / name;
    if (!is_readable) {
        const Result<std::filesystem::path> aside = free_name(*home, name + "-unread");
        if (!aside) {
            return aside.problem();
        }
        if (disk.rename(file, *aside) != 0) {
            return disk_problem(phrase("moved"), file, errno);
        }
    }
    return write_whole_file(disk, file, Bytes(text.begin(), text.end()));
}

}  // namespace hemline
