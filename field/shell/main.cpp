// hemline: the touch program on a tablet or a desk.
#include <CLI/CLI.hpp>
#include <csignal>
#include <cstdio>
#include <ctime>
#include <iostream>

#include "engine/words/program_version.h"
#include "engine/words/result.h"
#include "engine/words/shown_text.h"
#include "field/app/app.h"
#include "field/app/native_hand_over.h"
#include "field/shell/window.h"
#include "field/store/assets.h"
#include "field/store/clock.h"
#include "field/store/folder_view.h"
#include "field/store/folders.h"
#include "field/store/kept_folders.h"
#include "field/store/left_off_file.h"
#include "field/store/screen_scale.h"
#include "field/words/shown_stream.h"

namespace {

using namespace hemline;

int fail(const Problem& problem) {
    std::cerr << "hemline: " << said(problem) << '\n';
    return 1;
}

/// "1280x800" in window pixels.
std::string read_size(const std::string& text, WindowOptions& window) {
    char end = 0;
    if (std::sscanf(text.c_str(), "%5dx%5d%c", &window.w, &window.h, &end) == 2 &&
        window.w >= 320 && window.h >= 320 && window.w <= 16384 && window.h <= 16384) {
        return {};
    }
    return "size is WIDTHxHEIGHT in pixels, 320 to 16384, like 1280x800";
}

/// The screen's settings on this device; a scale given on the command line goes before the measured
/// scale.
void set_screen(AppOptions& options, WindowOptions& window, bool given) {
    const Result<ScreenScale> scale = read_screen_scale();
    if (!scale) {
        fail(scale.problem());
    }
    const ScreenScale known = scale ? *scale : ScreenScale{};
    options.screen = known;
    options.ask_scale = !given && !known.px_per_mm && !known.put_off;
    if (!given) {
        window.px_per_mm = known.px_per_mm.value_or(px_per_mm_unknown);
    }
    options.px_per_mm = window.px_per_mm;
}

/// Folders besides the folder of jobs, as chosen on this device; `crew` if the command line names
/// it.
void take_folders(AppOptions& options, const Practice& practice) {
    const std::optional<std::filesystem::path> crew = options.folders.crew;
    const Result<KeptFolders> kept = read_kept_folders();
    if (!kept) {
        fail(kept.problem());
    }
    options.folders = kept ? *kept : KeptFolders{};
    if (crew) {
        options.folders.crew = std::filesystem::absolute(*crew);
    }
    const std::vector<std::filesystem::path> places = starting_folders().folders;
    if (!options.folders.hand_over && !places.empty()) {
        const std::filesystem::path documents = places.front() / "Documents";
        std::error_code error;
        options.folders.hand_over =
            std::filesystem::is_directory(documents, error) ? documents : places.front();
    }
    options.hand_over =
        native_hand_over(options.jobs_folder, options.device, practice, options.wall_ms);
}

int show(WindowOptions window, AppOptions options) {
    const Result<std::filesystem::path> folder = assets_folder();
    if (!folder) {
        return fail(folder.problem());
    }
    const Result<Assets> assets = read_assets(*folder);
    if (!assets) {
        return fail(assets.problem());
    }
    const Result<std::filesystem::path> jobs = jobs_folder();
    if (!jobs) {
        return fail(jobs.problem());
    }
    const Result<std::uint64_t> device = device_id();
    if (!device) {
        return fail(device.problem());
    }
    options.jobs_folder = *jobs;
    options.device = *device;
    options.wall_ms = wall_ms;
    options.keep_scale = [](const ScreenScale& screen) {
        Disk disk;
        return keep_screen_scale(disk, screen);
    };
    options.wake = wake_window;
    options.platform.copy = copy_text;
    take_folders(options, assets->practice);
    Disk left_off_disk;
    const Result<std::string> left_off = read_left_off();
    if (!left_off) {
        fail(left_off.problem());
    }
    LeftOffKeeper keeper(
        [&](const std::string& text) { return write_left_off(left_off_disk, text); });
    options.keep_left_off = [&](const std::string& text) { return keeper.keep(text); };
    App app(*assets, std::move(options));
    app.go_back_to(left_off ? *left_off : "");
    window.may_close = [&] { return app.close(); };
    const std::optional<Problem> problem =
        show_window(window, {.draw = [&](Ui& ui) { app.draw(ui); },
                             .palette = [&]() -> const Palette& { return app.palette(); },
                             .px_per_mm = [&] { return app.px_per_mm(); },
                             .press = [&](Key key) { app.press(key); }});
    return problem ? fail(*problem) : 0;
}

}  // namespace

int main(int count, char** words) {
    std::signal(SIGXFSZ, SIG_IGN);  // too large a file is a failed write
    WindowOptions window;
    AppOptions options;
    std::string size;
    std::string job;
    std::string crew;
    std::string targets;
    std::string picture;
    bool night = false;
    const ShownStream shown_out(std::cout), shown_err(std::cerr);
    CLI::App line("Hemline: from the first tape reading to a finished edge.", "hemline");
    line.failure_message([](const CLI::App*, const CLI::Error& wrong) {
        return shown_text(wrong.what()) + "\nRun with --help for more information.\n";
    });
    line.set_version_flag("--version", words_of(program_version()).english(), "version and commit");
    line.add_option("--job", job, "folder of a job to open")->type_name("JOB");
    line.add_option("--crew", crew, "crew folder to carry jobs through, this time")
        ->type_name("FOLDER");
    line.add_option("--size", size, "window in pixels, like 1280x800")
        ->check([&](const std::string& text) { return read_size(text, window); })
        ->type_name("WxH");
    CLI::Option* const scale =
        line.add_option("--px-per-mm", window.px_per_mm, "pixels in a millimeter of the screen");
    scale->check(CLI::Range(px_per_mm_least, px_per_mm_most))->type_name("N");
    line.add_flag("--night", night, "dark ground");
    line.add_option("--targets", targets, "file to list what can be tapped in, as JSON")
        ->type_name("FILE");
    line.add_option("--shot", picture, "file for a picture of each screen at rest")
        ->type_name("FILE.png");
    line.add_option("--fonts", window.font_folder, "folder that holds B612-Regular.otf")
        ->type_name("FOLDER");
    try {
        line.parse(count, words);
    } catch (const CLI::ParseError& error) {
        return line.exit(error) == 0 ? 0 : 2;
    }
    set_screen(options, window, scale->count() > 0);
    window.targets = targets;
    window.picture = picture;
    const bool dark = night || options.screen.night.value_or(false);
    options.light = dark ? Light::night : Light::day;
    if (!job.empty()) {
        options.job = job;
    }
    if (!crew.empty()) {
        options.folders.crew = crew;
    }
    return show(window, std::move(options));
}
