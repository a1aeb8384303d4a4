#include "field/store/screen_scale.h"

#include <cerrno>
#include <cstdio>
#include <string>
#include <system_error>

#include <fcntl.h>
#include <unistd.h>

#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "field/store/open_file.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

std::optional<ScreenScale> parse(const std::string& text) {
    if (text == "later\n") {
        return ScreenScale{std::nullopt, true};
    }
    float px = 0;
    int end = 0;
    const bool read = std::sscanf(text.c_str(), "%12f px/mm%n", &px, &end) == 1 && end > 0;
    if (!read || text.substr(static_cast<std::size_t>(end)) != "\n" ||
        !(px >= px_per_mm_least && px <= px_per_mm_most)) {
        return std::nullopt;
    }
    return ScreenScale{px, false};
}

std::string print(const ScreenScale& scale) {
    if (!scale.px_per_mm) {
        return "later\n";
    }
    char text[32];
    std::snprintf(text, sizeof text, "%.4f px/mm\n", static_cast<double>(*scale.px_per_mm));
    return text;
}

/// Writes the draft beside the file and puts it in its place.
int replace(Disk& disk, const fs::path& file, const std::string& text) {
    const fs::path draft = file.string() + "." + std::to_string(::getpid()) + ".new";
    ::unlink(draft.c_str());  // left by a program of the same number that was killed
    const OpenFile opened(disk.open(draft, O_WRONLY | O_CREAT | O_EXCL));
    if (!opened.is_open()) {
        return errno;
    }
    int error = write_all(disk, opened.get(), Bytes(text.begin(), text.end()));
    if (error == 0 && disk.sync(opened.get()) != 0) {
        error = errno;
    }
    if (error == 0 && ::rename(draft.c_str(), file.c_str()) != 0) {
        error = errno;
    }
    if (error != 0) {
        ::unlink(draft.c_str());
    }
    return error;
}

}  // namespace

Result<ScreenScale> read_screen_scale() {
    const Result<fs::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    const fs::path file = *home / "screen";
    std::error_code error;
    if (!fs::exists(file, error)) {
        return ScreenScale{};
    }
    const Result<Bytes> bytes = read_file(file);
    if (!bytes) {
        return bytes.problem();
    }
    const std::optional<ScreenScale> scale = parse(std::string(bytes->begin(), bytes->end()));
    if (!scale) {
        return Problem{shown(file) + " does not say the screen's scale, like \"5.9 px/mm\".",
                       "Measure it again on the jobs screen: Screen size."};
    }
    return *scale;
}

std::optional<Problem> keep_screen_scale(const ScreenScale& scale) {
    const Result<fs::path> home = hemline_folder();
    if (!home) {
        return home.problem();
    }
    std::error_code error;
    fs::create_directories(*home, error);
    if (error) {
        return disk_problem("created", *home, error.value());
    }
    Disk disk;
    const fs::path file = *home / "screen";
    if (const int failed = replace(disk, file, print(scale)); failed != 0) {
        return disk_problem("written", file, failed);
    }
    return sync_folder(disk, *home);
}

}  // namespace hemline
