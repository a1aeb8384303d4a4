#include "field/app/app.h"

#include <algorithm>

#include "engine/plan/make_plan.h"
#include "engine/plan/plan_changes.h"
#include "engine/record/about_thing.h"
#include "engine/work/job_sections.h"
#include "engine/work/procedure_words.h"
#include "field/app/demo.h"
#include "field/app/draw_place.h"
#include "field/screens/page/frame.h"
#include "field/state/edge_view.h"
#include "field/state/plan_news.h"
#include "field/state/told.h"
#include "field/store/folders.h"
#include "field/store/job_lock.h"
#include "field/store/new_job.h"

namespace hemline {

App::App(Assets assets, AppOptions options)
    : assets_(std::move(assets)),
      options_(std::move(options)),
      light_(options_.light),
      search_(options_.wake),
      crew_(options_.wake) {
    job_assets_ = assets_;
    state_.assets = &job_assets_;
    state_.outside.there = static_cast<bool>(options_.hand_over.put_into_file);
    state_.outside.kept = options_.folders;
    state_.ask_scale = options_.ask_scale;
    state_.hand = options_.screen.left_hand ? Hand::left : Hand::right;
    if (!options_.screen.people.empty()) {
        held_by(options_.screen.people.back());
    }
    state_.language = options_.screen.spanish ? Language::spanish : Language::english;
    state_.both_units = options_.screen.both_units;
    state_.promised = options_.promised;
    const Platform& platform = options_.platform;
    state_.can = {platform.give != nullptr, platform.choose != nullptr, platform.print != nullptr};
    show_jobs();
    if (options_.job) {
        open_job(*options_.job);
    }
}

void App::draw(Ui& ui) {
    hear_saves();
    hear_search();
    hear_crew();
    ui.set_hand(state_.hand);
    ui.speak(phrases(), state_.marks);
    Wish wish = draw_place(ui, state_, drafts_);
    if (ui.tapped() == go_on_elsewhere) {
        wish = {};
        wish.outside = OutsideWish{OutsideWish::Deed::choose, {}, {}, Choosing::go_on};
    } else if (ui.tapped() == back_up_now) {
        wish = {};
        wish.errand = Errand::back_up;
    }
    act(wish);
}

bool App::reads_tilt() const { return state_.where.place == Place::tilt && drafts_.tilt.taking; }

void App::tilt(TiltSample sample) {
    state_.tilt_there = true;
    if (!reads_tilt()) {
        return;
    }
    TiltDraft& draft = drafts_.tilt;
    draft.coming.push_back(sample);
    if (draft.coming.size() == tilt_samples) {
        (draft.first.empty() ? draft.first : draft.turned) = draft.coming;
        draft.coming.clear();
        draft.taking = false;
    }
}

void App::act(const Wish& wish) {
    const bool writes =
        wish.fact || wish.start_demo || wish.start_job || wish.undo || wish.pick.has_value();
    if (writes && state_.by.empty()) {
        ask_who();
        return;
    }
    if (wish.toggle_light) {
        light_ = light_ == Light::day ? Light::night : Light::day;
        options_.screen.night = light_ == Light::night;
        keep_screen();
    }
    if (wish.toggle_hand) {
        options_.screen.left_hand = !options_.screen.left_hand;
        state_.hand = options_.screen.left_hand ? Hand::left : Hand::right;
        keep_screen();
    }
    if (wish.toggle_language) {
        options_.screen.spanish = !options_.screen.spanish;
        state_.language = options_.screen.spanish ? Language::spanish : Language::english;
        keep_screen();
    }
    if (wish.toggle_units) {
        options_.screen.both_units = !options_.screen.both_units;
        state_.both_units = options_.screen.both_units;
        keep_screen();
    }
    if (wish.put_off_scale || wish.scale_by) {
        keep_scale(wish);
    }
    if (wish.hold) {
        hold(options_.screen.people, *wish.hold);
        held_by(*wish.hold);
        if (unsigned_) {  // back to what was to be written, as it was keyed in
            state_.where = unsigned_->where;
            drafts_ = unsigned_->drafts;
            state_.notice = {};
            unsigned_.reset();
        } else {
            go({state_.job.name.empty() ? Place::jobs : Place::roof, {}});
        }
        keep_screen();
    }
    if (wish.open_job) {
        open_job(*wish.open_job);
    }
    if (wish.start_demo) {
        start_demo();
    }
    if (wish.start_job) {
        start_job(*wish.start_job);
    }
    if (wish.undo) {
        undo();
    }
    if (wish.outside) {
        act_outside(*wish.outside);
    }
    if (wish.pick) {
        pick(*wish.pick);
    }
    if (wish.errand) {
        run(*wish.errand, drafts_);
    }
    if (wish.fact) {
        // A value that is not saved stays on the screen where it was keyed in.
        const Plan before = state_.plan;
        const std::int64_t sticks_before = sticks_in_all(state_.job, before);
        if (append(*wish.fact, wish.supersedes)) {
            if (wish.go) {
                go(*wish.go);
            } else {
                after(*wish.fact);
            }
            add_notice(plan_news(state_, *wish.fact, before, sticks_before));
        }
    } else if (wish.go && unsigned_ && state_.where.place == Place::person) {
        state_.where = unsigned_->where;  // nobody said it: nothing is lost, and nothing written
        drafts_ = unsigned_->drafts;
        state_.notice = unsigned_->notice;
        unsigned_.reset();
    } else if (wish.go) {
        go(*wish.go);
    }
}

/// Nobody holds the tablet until somebody has said so: what is written is signed by nobody else.
void App::ask_who() {
    unsigned_ = Aside{state_.where, drafts_, state_.notice};
    drafts_.naming_job = false;
    go({Place::person, {}});
    state_.notice = say("Say who holds the tablet first: that name stands on what is written.");
}

const Phrases& App::phrases() const {
    return state_.language == Language::spanish ? assets_.spanish : english_;
}

void App::after(const Fact& fact) {
    const EdgeWork* const work = edge_of(state_, edge_in(fact));
    if (struck_by(fact)) {
        go(state_.where);
    } else if (work == nullptr || std::holds_alternative<EdgeFinished>(fact)) {
        go({Place::roof, {}});
    } else {
        go(next_work_on(state_, *work).where);
    }
}

void App::go(Where where) {
    state_.where = std::move(where);
    state_.notice = {};
    const bool naming_job = drafts_.naming_job;
    drafts_ = {};
    drafts_.naming_job = naming_job && state_.where.place == Place::person;
    if (const EdgeWork* const there = edge_of(state_, state_.where.edge)) {
        drafts_.edge = {there->edge, std::nullopt, false, false, {}};
    }
    if (state_.where.place == Place::jobs) {
        show_jobs();
    } else if (state_.where.place == Place::roof) {
        state_.outside.crew_new = 0;
    }
    look_outside();
    note_backup_age();
    if (state_.where.place == Place::choices && state_.choices.empty() && !state_.looking) {
        look_for_choices();
    }
}

/// Who writes from now on, and which way the screens are.
void App::held_by(const Person& person) {
    state_.by = person.name;
    state_.way = person.way;
    state_.people = options_.screen.people;
}

void App::keep_scale(const Wish& wish) {
    ScreenScale& screen = options_.screen;
    screen.put_off = true;
    if (wish.scale_by) {
        options_.px_per_mm =
            std::clamp(options_.px_per_mm * *wish.scale_by, px_per_mm_least, px_per_mm_most);
        screen.px_per_mm = options_.px_per_mm;
        screen.put_off = false;
    }
    state_.ask_scale = false;
    go({Place::jobs, {}});
    keep_screen();
}

void App::keep_screen() {
    if (options_.keep_scale) {
        if (const std::optional<Problem> problem = options_.keep_scale(options_.screen)) {
            state_.notice = said(*problem);
        }
    }
}

/// Problem: there may be more jobs than those in the state.
std::optional<Problem> App::list_jobs() {
    const auto listed = hemline::list_jobs(options_.jobs_folder);
    state_.jobs = listed ? *listed : std::vector<std::filesystem::path>();
    for (const std::filesystem::path& job : state_.outside.kept.jobs) {
        const Result<bool> is_job = holds_journals(job);
        if (!is_job || *is_job) {
            state_.jobs.push_back(job);
        }
    }
    return listed ? std::nullopt : std::optional<Problem>(listed.problem());
}

void App::show_jobs() {
    if (const std::optional<Problem> problem = list_jobs()) {
        add_notice(said(*problem));
    }
}

void App::add_notice(const Text& words) { state_.notice = joined({state_.notice, words}, " "); }

/// The job's record on this tablet, with the place unchanged. False: it cannot be had, and why is
/// said.
bool App::open_journal(const Result<std::filesystem::path>& named) {
    if (!settle()) {
        return false;
    }
    if (!named) {
        state_.notice = said(named.problem());
        return false;
    }
    const std::filesystem::path& folder = *named;
    const auto opened =
        JournalFile::open(folder, options_.device, Opening::either, options_.disk, options_.wake);
    if (!opened) {
        state_.notice = said(opened.problem());
        const Result<bool> is_job = holds_journals(folder);
        const auto seen = look_into(folder);
        if (state_.outside.there && is_job && *is_job && (!seen.can_write || is_free(folder))) {
            state_.outside.stuck = folder;
        }
        return false;
    }
    crew_.stop();
    journal_ = *opened;
    state_.outside.stuck.reset();
    under_way_.clear();  // of the job before: whoever keeps it says so if it is not kept
    state_.events = journal_->record().events;
    backup_ = read_backup_note(journal_->record().folder);
    compute();
    state_.saving = state_.events.empty() ? Saving::nothing : Saving::saved;
    state_.saved = state_.events.empty()
                       ? say("nothing to save yet")
                       : say("saved {1}", clock_time(wall_time(state_.events.back())));
    carry();
    return true;
}

void App::open_job(const std::filesystem::path& folder) {
    std::error_code not_there;
    if (journal_ && std::filesystem::equivalent(journal_->record().folder, folder, not_there)) {
        go({Place::roof, {}});  // it is open here already, and locked against a second opening
        return;
    }
    if (!open_journal(folder)) {
        return;
    }
    go({Place::roof, {}});
    for (const FileSetAside& stretch : journal_->record().set_aside) {
        add_notice(explain(stretch));
    }
}

void App::start_job(const std::string& name) {
    if (open_journal(new_job_folder(options_.jobs_folder, name)) &&
        append(JobStarted{name, "common practice"}, {})) {
        go({Place::add_edge, {}});
    }
}

void App::start_demo() {
    const Result<DemoRoof> demo = read_demo(assets_);
    if (!demo) {
        state_.notice = said(demo.problem());
        return;
    }
    if (!settle()) {
        return;
    }
    std::vector<Fact> facts = {JobStarted{demo->name, "common practice"}};
    for (const Edge& edge : demo->edges) {
        facts.push_back(EdgeAdded{edge});
        if (edge.lap) {
            facts.push_back(LapChosen{edge.id, edge.lap});
        }
    }
    const Result<std::filesystem::path> folder = new_job_folder(options_.jobs_folder, demo->name);
    const Result<Text> written = folder ? write_new_job(*options_.disk, *folder, facts, state_.by,
                                                        options_.device, options_.wall_ms())
                                        : Result<Text>(folder.problem());
    if (!written) {
        state_.saving = Saving::failed;
        state_.saved = say("not saved");
        state_.notice = said(written.problem());
        return;
    }
    open_job(*folder);
    if (journal_) {
        wait_for_whole();
    }
}

/// Shows the event at once; false when it is known already that it is not saved.
bool App::append(const Fact& fact, const std::vector<EventId>& supersedes) {
    if (!journal_) {
        state_.notice = say("No job is open. Open or start one first.");
        return false;
    }
    const Result<Event> event =
        journal_->hand_over(fact, state_.by, supersedes, options_.wall_ms());
    if (!event) {
        if (settle()) {  // what was kept before stands
            take_back({fact, state_.where, drafts_}, event.problem());
        }
        return false;
    }
    under_way_.push_back({fact, state_.where, drafts_});
    state_.saving = Saving::under_way;
    state_.saved = say("saving");
    hear_saves();
    if (state_.saving == Saving::failed) {
        return false;
    }
    state_.events = journal_->record().events;
    compute();
    return true;
}

void App::hear_saves() {
    if (!journal_) {
        return;
    }
    const std::vector<SaveReturned> returned = journal_->returned();
    for (const SaveReturned& back : returned) {
        if (back.problem) {
            const KeptFrom from = std::move(under_way_.front());
            under_way_.pop_front();
            take_back(from, *back.problem);
            return;
        }
        under_way_.pop_front();
    }
    if (!returned.empty() && under_way_.empty()) {
        state_.saving = Saving::saved;
        state_.saved = say("saved {1}", clock_time(wall_time(journal_->record().events.back())));
        state_.outside.stuck.reset();
        carry();
    }
}

/// Back to where the event was keyed in, with its draft and the reason. What was kept after it is
/// not saved either, and is named, so that nobody goes on as if it were.
void App::take_back(const KeptFrom& from, const Problem& problem) {
    state_.events = journal_->record().events;
    state_.where = from.where;
    drafts_ = from.drafts;
    compute();
    state_.saving = Saving::failed;
    state_.saved = say("not saved");
    state_.notice = said(problem);
    if (state_.outside.there && !std::holds_alternative<JobStarted>(from.fact)) {
        state_.outside.stuck = journal_->record().folder;
    }
    if (std::holds_alternative<JobStarted>(from.fact)) {
        crew_.stop();
        journal_.reset();  // a job of which nothing is saved is none
        show_jobs();
    } else {
        for (const KeptFrom& later : under_way_) {
            add_notice(say("Not saved either: {1}.", told(state_, later.fact)));
        }
    }
    under_way_.clear();
}

bool App::close() {
    if (!settle()) {
        return false;
    }
    hear_crew();
    crew_.settle();
    crew_.stop();
    search_.cancel();
    return true;
}

bool App::settle() {
    if (!journal_) {
        return true;
    }
    journal_->settle();
    const bool was_failed = state_.saving == Saving::failed;
    hear_saves();
    return was_failed || state_.saving != Saving::failed;
}

void App::undo() {
    const std::optional<EventId> target = undo_target(state_.events, state_.job.struck, writer());
    if (target && append(StruckFor{*target, StrikeReason::undone}, {*target})) {
        go({Place::history, {}});
    }
}

void App::compute() {
    state_.job = replay(state_.events, assets_.practice);
    state_.marks = marks_of(state_.job.practice);
    job_assets_.catalogue = catalogue_on(assets_.catalogue, assets_.sections, state_.job);
    job_assets_.sections = sections_on(assets_.sections, state_.job);
    state_.plan = make_plan(state_.job, job_assets_.catalogue);
    state_.outline = outline_of(state_.job);
    state_.writer = writer();
    state_.undo_target = undo_target(state_.events, state_.job.struck, state_.writer);
    state_.clocks = clock_doubts(state_.events);
    search_.cancel();
    state_.choices.clear();
    state_.looking = false;
    const auto& proofs = state_.plan.proofs;
    if (!std::all_of(proofs.begin(), proofs.end(), [](const Proof& p) { return p.proved; })) {
        look_for_choices();
    }
}

void App::look_for_choices() {
    state_.looking = true;
    search_.start(state_.job, state_.events, job_assets_.catalogue);
    hear_search();
}

void App::hear_search() {
    if (auto found = search_.found()) {
        state_.choices = std::move(*found);
    }
    state_.looking = search_.is_under_way();
}

}  // namespace hemline
