// A crew's way through the app, by touches alone: a tablet, its jobs in a separate folder, and a
// thumb that answers what the screen asks.
//
//   Journey crew;
//   crew.tap("demo");
//   crew.finish_edge("A");       // reads, cuts, fits and ticks whatever comes next on it
//   crew.start_again();          // the battery was flat
#pragma once

#include <cstdint>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "field/app/app.h"
#include "field/state/edge_view.h"
#include "tests/field/harness.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {

/// What the assets folder holds.
Assets assets_read();

/// An app that starts with the job in that folder, without a screen.
std::unique_ptr<App> app_on(const std::filesystem::path& job,
                            std::int64_t wall_ms = 1'770'000'000'000);

struct Journey {
    explicit Journey(float w = 1280, float h = 800, float px_per_mm = px_per_mm_unknown);
    /// Saved on that disk, on a thread other than the drawing thread; `wake` as in AppOptions.
    Journey(std::shared_ptr<Disk> disk, std::function<void()> wake);
    /// Another tablet of a crew, by its number, with a crew folder.
    Journey(std::uint64_t device, std::filesystem::path crew, std::function<void()> wake);

    /// Taps, and counts it. Events it appended go to `on_event`, the screen it led to to
    /// `on_screen`.
    void tap(std::string_view name);
    void tap_all(const std::vector<std::string>& names);
    /// Touches the black button as long as it goes to what is below the fold, until that target is
    /// there.
    void read_on(std::string_view name);
    /// Keys a length in, field by field, on a draft that is empty.
    void key_in(Length length);
    void key_in(std::int64_t count);

    /// Reads the edge twice, a sixteenth of an inch apart, from the roof, and saves the pitch.
    void read_edge(const std::string& edge, Length first, Length second, const std::string& pitch);
    /// Does what the screen asks, as practice wants it: the primary action with its value.
    void do_next();
    /// All is safe; nobody has said who watches.
    void pass_gate();
    /// Until that edge is finished.
    void finish_edge(const std::string& edge);
    /// Until that step is the next step of the edge.
    void reach_step(const std::string& edge, std::string_view step, int piece = 0);
    /// Until that cut card is shown.
    void reach_card(const std::string& edge, TrimRole role, int piece);

    /// The tablet goes off, and another app starts with the same job.
    void start_again();
    /// The program is killed, and started as a crew starts it: with what the device kept.
    void kill();
    /// Another app starts with that job.
    void open_job(const std::filesystem::path& job) { start(job); }

    [[nodiscard]] const State& state() const { return app->state(); }
    [[nodiscard]] const Where& where() const { return app->state().where; }
    [[nodiscard]] const EdgeWork& work(std::string_view edge) const;
    [[nodiscard]] EdgeStatus status(std::string_view edge) const;
    /// The step that is next on the edge.
    [[nodiscard]] Step step(std::string_view edge) const;
    [[nodiscard]] std::filesystem::path job() const;
    template <class Fact>
    [[nodiscard]] const Fact& last() const {
        return std::get<Fact>(state().events.back().fact);
    }

    TemporaryFolder folder;
    TemporaryFolder outside;  ///< where job files go
    std::int64_t wall_ms = 1'760'000'000'000;
    std::unique_ptr<App> app;
    std::unique_ptr<Harness> screen;
    int touches = 0;
    bool by_keyboard = false;  ///< no touch: Tab to what is to be tapped, and Enter; lengths typed
    std::string copied;        ///< to the clipboard, last
    Length remainder_off;      ///< how much more than planned the tape shows for the last piece
    std::function<void()> on_event, on_screen;
    std::optional<ScreenScale> scale_kept;        ///< what the device was told to save
    std::string left_off;                         ///< likewise
    KeptFolders folders{{}, outside.path(), {}};  ///< likewise

  private:
    void scroll_to(std::string_view name);
    void press_by_key(std::string_view name);
    /// The reading that is kept is not what the roof says.
    [[nodiscard]] bool roof_doubts() const;
    void answer(const Step& step);
    /// By the foreman, to whom the tablet is handed and who hands it back.
    void check_off();
    void start(std::optional<std::filesystem::path> job);
    float w_ = 1280, h_ = 800, px_per_mm_ = px_per_mm_unknown;
    bool insists_ = false;
    bool ask_scale_ = true;  // a new tablet
    std::shared_ptr<Disk> disk_ = std::make_shared<Disk>();
    std::function<void()> wake_;
    std::uint64_t device_;
};

/// As edges A and C of the demo are read.
inline constexpr Length eave_a_length = feet(46) + sixteenths(4);
inline constexpr Length eave_c_length = feet(15) + inches(8);

/// Whether some words on the screen hold that part.
bool shows(const Journey& crew, std::string_view part);
/// The run of the edge's main trim.
const Run& run_on(const Journey& crew, std::string_view edge);
/// From a new start to the section of eave C.
void reach_section(Journey& crew);

/// Processor time of this program so far.
double processor_s();

}  // namespace hemline
