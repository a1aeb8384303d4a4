// The app: the one way in. A wish becomes an event, the event is saved, and all is computed again.
#pragma once

#include <cstdint>
#include <deque>
#include <filesystem>
#include <functional>
#include <memory>
#include <optional>

#include "field/app/crew.h"
#include "field/app/left_off.h"
#include "field/app/plan_search.h"
#include "field/app/platform.h"
#include "field/state/outside.h"
#include "field/state/state.h"
#include "field/store/backup_note.h"
#include "field/store/journal_file.h"
#include "field/store/screen_scale.h"
#include "field/theme/theme.h"
#include "field/touch/keys.h"
#include "field/touch/ui.h"

namespace hemline {

struct AppOptions {
    std::filesystem::path jobs_folder;  ///< where new jobs go and old ones are listed from
    std::uint64_t device = 0;
    std::function<std::int64_t()> wall_ms;     ///< Unix time in milliseconds
    std::optional<std::filesystem::path> job;  ///< opened at the start
    Light light = Light::day;
    float px_per_mm = px_per_mm_unknown;  ///< of window pixels
    bool ask_scale = false;               ///< it is not known, and nobody put it off
    ScreenScale screen;                   ///< what this device keeps of its screen
    /// Keeps it on this device; may be empty.
    std::function<std::optional<Problem>(const ScreenScale&)> keep_scale;
    HandOver hand_over;  ///< empty where there are no folders to choose from
    KeptFolders folders;
    std::shared_ptr<Disk> disk = std::make_shared<Disk>();
    /// Called on another thread when a save has returned or a plan was found: draw() then takes
    /// notice of it. Empty: there is no other thread, and a save is waited for where it is asked
    /// for.
    std::function<void()> wake;
    Platform platform;
    Promised promised = Promised::lasts;
};

class App {
  public:
    App(Assets assets, AppOptions options);

    /// Draws the current screen and acts on what was touched.
    void draw(Ui& ui);
    /// Waits until nothing is being saved. False when something was not: it is on the screen again,
    /// where it was keyed in, with what went wrong.
    bool settle();
    /// The same at the end; nothing calls `wake` after it was true.
    bool close();

    /// A key that is not text: undoes, or shows the next work on the edge before or after.
    void press(Key key);

    /// What the tablet's sensor says now; a tablet without one never calls.
    void tilt(TiltSample sample);
    /// A tilt is being read: samples change the screen.
    [[nodiscard]] bool reads_tilt() const;

    /// Takes a job file in: into the job that it is of, or as a new one. A file that is none is
    /// refused by name, on the screen, and nothing is changed.
    void take_file(const std::filesystem::path& file);
    /// What the machine says to Platform::ask_promise().
    void promised(Promised answer) { state_.promised = answer; }
    /// What was written whole last is kept; or not, and it is as it was before.
    void kept_whole(const std::optional<Problem>& problem);

    /// What became of the file that was given last; nothing: it was taken.
    void given(const std::optional<Problem>& problem);

    /// Where the program is now, and what is half keyed in.
    [[nodiscard]] LeftOff left_off() const;
    /// There again, if it was left on this day and the job is on this device.
    void go_back_to(const LeftOff& left);
    /// What the text says on the screens.
    [[nodiscard]] std::string in_words(const Text& text) const {
        return phrases().of(text, state_.marks);
    }

    /// Waits until no better plan is being looked for.
    void settle_search() { search_.settle(); }
    /// Waits until what is saved here is given out to the crew.
    void settle_crew() { crew_.settle(); }

    [[nodiscard]] const State& state() const { return state_; }
    /// Pixels of the window in a millimetre: the next Ui is to have as many.
    [[nodiscard]] float px_per_mm() const { return options_.px_per_mm; }
    [[nodiscard]] Light light() const { return light_; }
    /// Colours of the light it is: give them to the next Ui.
    [[nodiscard]] const Palette& palette() const { return palette_of(light_); }

  private:
    void act(const Wish& wish);
    /// What the screen was when an event was kept, in case it is not saved.
    struct KeptFrom {
        Fact fact;
        Where where;
        Drafts drafts;
    };

    void open_job(const std::filesystem::path& folder);
    bool open_journal(const Result<std::filesystem::path>& named);
    void start_demo();
    void wait_for_whole();
    void start_job(const std::string& name);
    bool append(const Fact& fact, const std::vector<EventId>& supersedes);
    void hear_saves();
    void take_back(const KeptFrom& from, const Problem& problem);
    void after(const Fact& fact);
    void undo();
    [[nodiscard]] bool has_draft() const;
    void compute();
    void add_notice(const Text& words);
    [[nodiscard]] std::uint64_t writer() const;
    void look_for_choices();
    void hear_search();
    void go(Where where);
    std::optional<Problem> list_jobs();
    void show_jobs();
    void keep_scale(const Wish& wish);
    void keep_screen();
    void held_by(const Person& person);
    void ask_who();
    [[nodiscard]] const Phrases& phrases() const;
    // What lies outside the job, in hand_over.cpp.
    void carry();
    void hear_crew();
    void write_under_new_number();
    void pick(EventId chosen);
    void act_outside(const OutsideWish& wish);
    void look_outside();
    void choose(Choosing choosing);
    void use_folder(const std::filesystem::path& folder);
    void leave_folder();
    void go_on_in(const std::filesystem::path& folder);
    void put_into_file();
    void take_in(const OutsideWish& wish);
    void keep_folders();
    void run(Errand errand, const Drafts& drafts);
    void back_up();
    bool give(const std::string& name, std::string_view kind, const Bytes& bytes);
    void print_day(const Drafts& drafts);
    void put_on_paper(Errand errand, bool a4);
    void note_backup();
    void note_backup_age();

    Phrases english_;
    Assets assets_;      ///< as they were read
    Assets job_assets_;  ///< with the trims as the open job bends them
    AppOptions options_;
    State state_;
    Drafts drafts_;
    Light light_;
    std::shared_ptr<JournalFile> journal_;
    std::deque<KeptFrom> under_way_;
    PlanSearch search_;
    Crew crew_;  ///< last: it ends before the journal's lock goes
    /// What the screen was when another folder was to be chosen.
    struct Aside {
        Where where;
        Drafts drafts;
        Text notice;
    };
    std::optional<Aside> aside_;
    std::optional<Aside> unsigned_;  ///< something was to be written, and nobody holds the tablet
    std::optional<BackupNote> being_given_;
    std::optional<BackupNote> backup_;
    bool whole_under_way_ = false;  ///< a job put in place whole is being kept
};

}  // namespace hemline
