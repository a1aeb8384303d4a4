// The app: draws the screens, hands what happens to update(), and does the deeds that it wants.
#pragma once

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

#include "engine/handover/page_words.h"
#include "field/app/app_options.h"
#include "field/app/crew.h"
#include "field/app/plan_search.h"
#include "field/store/journal_file.h"
#include "field/theme/theme.h"
#include "field/touch/keys.h"
#include "field/touch/ui.h"
#include "field/update/update.h"

namespace hemline {

class App {
  public:
    App(Assets assets, AppOptions options);

    /// Draws the current screen and acts on what was touched.
    void draw(Ui& ui);
    /// Waits until nothing is being saved. False when something could not be saved: it is on the
    /// screen again, where it was keyed in, with what went wrong.
    bool settle();
    /// The same at the end of the program; `wake` is not called after it returned true.
    bool close();

    /// A key that is not text: undoes, copies, or shows the next work on the edge before or after.
    void press(Key key);

    /// What the tablet's sensor says now; never called on a tablet without a sensor.
    void tilt(TiltSample sample) { tell(news::Tilted{sample}); }
    /// A tilt is being read: samples change the screen.
    [[nodiscard]] bool reads_tilt() const;

    /// Takes in a job file: into the job it belongs to, or as a new job. A file that is not a job
    /// file is refused by name on the screen, and nothing changes.
    void take_file(const std::filesystem::path& file) { tell(news::FileChosen{file}); }
    /// The machine's answer to Platform::ask_promise().
    void promised(Promised answer) { tell(news::PromiseAnswered{answer}); }
    /// The files written last as a whole are kept; or not, and they are as they were before.
    void kept_whole(const std::optional<Problem>& problem) { tell(news::KeptWhole{problem}); }

    /// What happened to the file that was given last; nothing: it was taken.
    void given(const std::optional<Problem>& problem) { tell(news::Taken{problem}); }

    /// Where the program is now, and what is half keyed in there and elsewhere.
    [[nodiscard]] LeftOff left_off() const;
    /// Goes back to where AppOptions::keep_left_off was told that it is, if the job is on this
    /// device. A text that cannot be read is said on the screen, and changes nothing.
    void go_back_to(const std::string& text);
    /// The text in the words of the screens.
    [[nodiscard]] std::string in_words(const Text& text) const {
        return phrases().of(text, state().marks, state().crew_words);
    }
    /// What is on paper and in files is in the language and on the marks of the tablet. The app
    /// must outlive them.
    [[nodiscard]] PageWords page_words() const {
        return {state().language, [this](const Text& text) { return in_words(text); }};
    }

    /// Waits until no better plan is being looked for.
    void settle_search() { search_.settle(); }
    /// Waits until what is saved here is sent to the crew.
    void settle_crew() { crew_.settle(); }

    [[nodiscard]] const State& state() const { return session_.state; }
    /// Window pixels in a millimeter, for the next Ui.
    [[nodiscard]] float px_per_mm() const { return session_.px_per_mm; }
    [[nodiscard]] Light light() const { return session_.night ? Light::night : Light::day; }
    /// Colors for day or night: give them to the next Ui.
    [[nodiscard]] const Palette& palette() const { return palette_of(light()); }

  private:
    void tell(const News& what);
    [[nodiscard]] const Phrases& phrases() const;

    // run_saving.cpp
    void run(const deed::Append& append);
    void hear_saves();

    // run_opening.cpp
    void open_for(const Result<std::filesystem::path>& named, const OpenedFor& what_for);
    void take_in_by_hand(const deed::TakeIn& deed);
    void take_in_file(const deed::TakeIn& deed);
    void run(const deed::Open& deed);
    void run(const deed::OpenNew& deed);
    void run(const deed::OpenDemo& deed);
    void run(const deed::Close& deed);
    void run(const deed::TakeNewNumber& deed);
    void run(const deed::GoOnIn& deed);
    void run(const deed::TakeIn& deed);

    // run_outside.cpp
    [[nodiscard]] news::JobsListed listed(
        const std::vector<std::filesystem::path>& elsewhere) const;
    void hear_crew();
    void run(const deed::Carry& deed);
    void run(const deed::StopCarrying& deed);
    void run(const deed::ListJobs& deed);
    void run(const deed::LookOutside& deed);
    void run(const deed::FindFolders& deed);
    void run(const deed::LookIntoFolder& deed);
    void run(const deed::PutJobIntoFile& deed);
    void run(const deed::KeepFolders& deed);

    // run_device.cpp
    void hear_search();
    void run(const deed::KeepSettings& deed);
    void run(const deed::LookForChoices& deed);
    void run(const deed::StopSearch& deed);
    void run(const deed::TellTime& deed);

    void keep_left_off();

    // run_errands.cpp
    void run(const deed::BackUp& deed);
    void run(const deed::NoteBackup& deed);
    void run(const deed::RunErrand& deed);
    void give(const std::string& name, std::string_view kind, const Bytes& bytes,
              std::optional<BackupNote> backup = {});
    void print_day();
    void put_on_paper(Errand errand);

    // copy_table.cpp
    void copy_table();

    AppOptions options_;
    Session session_;
    std::string left_;  ///< as it was kept last
    std::shared_ptr<JournalFile> journal_;
    int openings_ = 0;  ///< number of the last opening
    PlanSearch search_;
    int search_number_ = 0;
    Crew crew_;  ///< declared last: it ends before the journal's lock is released
};

}  // namespace hemline
