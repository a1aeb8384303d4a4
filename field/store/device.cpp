// This device's number: drawn once, and put in place as a whole, so that two programs started
// together agree on it.
#include <cerrno>
#include <optional>
#include <string>
#include <system_error>

#include <sys/stat.h>
#include <unistd.h>

#include "engine/record/event.h"
#include "engine/words/result.h"
#include "field/store/disk_problem.h"
#include "field/store/drafts.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/listing.h"
#include "field/store/open_file.h"
#include "field/store/whole_file.h"
#include "field/store/writer.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

Result<std::uint64_t> read_device(const fs::path& file) {
    const Result<Bytes> bytes = read_file(file);
    if (!bytes) {
        return bytes.problem();
    }
    std::string text(bytes->begin(), bytes->end());
    if (!text.empty() && text.back() == '\n') {
        text.pop_back();
    }
    const std::optional<std::uint64_t> device = parse_device(text);
    if (!device || *device == 0) {
        return Problem{
            say("{1} does not hold this device's number, sixteen hex digits.", shown(file)),
            say("Put back the number from one of this device's journal names, or remove the file: "
                "a new number is then drawn.")};
    }
    return *device;
}

/// Writes the draft of the file and links it to its name, unless another program was there first.
std::optional<Problem> put_in_place(const fs::path& file, std::uint64_t device) {
    Disk disk;
    const std::string line = print_device(device) + "\n";
    const Result<fs::path> draft = write_draft(
        disk, file, [&](const struct stat&) { return Bytes(line.begin(), line.end()); });
    if (!draft) {
        return draft.problem();
    }
    int error = ::chmod(draft->c_str(), 0600) != 0 ? errno : 0;
    if (error == 0 && ::link(draft->c_str(), file.c_str()) != 0 && errno != EEXIST) {
        error = errno;
    }
    ::unlink(draft->c_str());
    if (error != 0) {
        return disk_problem(phrase("written"), file, error);
    }
    return sync_folder(disk, file.parent_path());
}

}  // namespace

/// Where the number is stored: this machine, and the inode of its file. A number that was copied to
/// another tablet or restored from a backup is stored elsewhere. Empty where that cannot be told.
Bytes place_of(const fs::path& file) {
    struct stat about {};
    const fs::path machine_file = "/etc/machine-id";
    const Result<There> there = what_is(machine_file);
    if (!inodes_last || ::stat(file.c_str(), &about) != 0 || !there) {
        return {};
    }
    Bytes place;
    if (*there != There::nothing) {
        const Result<Bytes> machine = read_file(machine_file);
        if (!machine) {
            return {};
        }
        place = *machine;
    }
    const std::string inode = std::to_string(about.st_ino) + "\n";
    place.insert(place.end(), inode.begin(), inode.end());
    return place;
}

/// Forgets a number that was copied here, so that a new number is drawn; notes where a new number
/// is stored.
std::optional<Problem> forget_copied(const fs::path& file) {
    const fs::path note = file.string() + "-place";
    const Bytes place = place_of(file);
    if (place.empty()) {
        return {};
    }
    const Result<There> there = what_is(note);
    if (!there) {
        return there.problem();
    }
    if (*there == There::nothing) {
        Disk disk;
        return write_whole_file(disk, note, place);
    }
    const Result<Bytes> noted = read_file(note);
    if (!noted || *noted == place) {
        return {};
    }
    if (::unlink(note.c_str()) != 0 || ::unlink(file.c_str()) != 0) {
        return disk_problem(phrase("removed, though it was copied from another tablet"), file,
                            errno);
    }
    return {};
}

Result<std::uint64_t> device_id() {
    const Result<fs::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    const fs::path file = *home / "device";
    Disk disk;
    sweep_drafts(disk, *home, Sweeping::shared, [](std::string_view) { return true; });
    if (const auto problem = forget_copied(file)) {
        return *problem;
    }
    const Result<There> there = what_is(file);
    if (!there) {
        return there.problem();
    }
    if (*there == There::nothing) {
        std::error_code error;
        fs::create_directories(*home, error);
        if (error) {
            return disk_problem(phrase("created"), *home, error.value());
        }
        const std::optional<std::uint64_t> device = draw_device();
        if (!device) {
            return disk_problem(phrase("drawn at random"), file, errno);
        }
        // Where the old number was stored says nothing about a new number.
        fs::remove(file.string() + "-place", error);
        if (const auto problem = put_in_place(file, *device)) {
            return *problem;
        }
        if (const auto problem = forget_copied(file)) {
            return *problem;
        }
    }
    return read_device(file);
}

}  // namespace hemline
