#include "field/app/app.h"

#include "field/app/demo.h"
#include "field/screens/edge_view.h"
#include "field/screens/frame.h"
#include "field/screens/screens.h"
#include "field/store/folders.h"

namespace hemline {

namespace {

Wish draw_place(Ui& ui, const State& state, Drafts& drafts) {
    switch (state.where.place) {
        case Place::jobs:
            return draw_jobs(ui, state, drafts);
        case Place::roof:
            return draw_roof(ui, state);
        case Place::add_edge:
            return draw_add_edge(ui, state, drafts);
        case Place::reading:
            return draw_reading(ui, state, drafts);
        case Place::pitch:
            return draw_pitch(ui, state, drafts);
        case Place::run:
            return draw_run(ui, state);
        case Place::card:
            return draw_card(ui, state);
        case Place::differently:
        case Place::spoiled:
            return draw_real_cut(ui, state, drafts);
        case Place::steps:
            return draw_steps(ui, state, drafts);
        case Place::history:
            return draw_history(ui, state);
        case Place::person:
            return draw_person(ui, state, drafts);
    }
    return {};
}

/// The edge a fact is about; empty when it is about the job.
std::string edge_in(const Fact& fact) {
    return std::visit(
        [](const auto& said) -> std::string {
            if constexpr (requires {
                              { said.edge } -> std::convertible_to<std::string>;
                          }) {
                return said.edge;
            } else {
                return {};
            }
        },
        fact);
}

}  // namespace

App::App(Assets assets, AppOptions options)
    : assets_(std::move(assets)), options_(std::move(options)), light_(options_.light) {
    state_.assets = &assets_;
    state_.by = "Installer";
    list_jobs();
    if (options_.job) {
        open_job(*options_.job);
    }
}

void App::draw(Ui& ui) { act(draw_place(ui, state_, drafts_)); }

void App::act(const Wish& wish) {
    if (wish.toggle_light) {
        light_ = light_ == Light::day ? Light::night : Light::day;
    }
    if (wish.hold_by) {
        state_.by = *wish.hold_by;
        go({state_.job.name.empty() ? Place::jobs : Place::roof, {}});
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
    if (wish.fact) {
        // A value that is not saved stays on the screen where it was keyed in.
        if (append(*wish.fact, wish.supersedes)) {
            if (wish.go) {
                go(*wish.go);
            } else {
                after(*wish.fact);
            }
        }
    } else if (wish.go) {
        go(*wish.go);
    }
}

void App::after(const Fact& fact) {
    const EdgeWork* const work = edge_of(state_, edge_in(fact));
    if (std::holds_alternative<Struck>(fact)) {
        go(state_.where);
    } else if (work == nullptr || std::holds_alternative<EdgeFinished>(fact)) {
        go({Place::roof, {}});
    } else {
        go(next_work_on(state_, *work).where);
    }
}

void App::go(Where where) {
    state_.where = std::move(where);
    state_.notice.clear();
    const bool naming_job = drafts_.naming_job;
    const Edge edge = state_.where.place == Place::add_edge ? Edge{} : drafts_.edge;
    drafts_ = {};
    drafts_.naming_job = naming_job && state_.where.place == Place::person;
    drafts_.edge = edge;
    if (state_.where.place == Place::jobs) {
        list_jobs();
    }
}

void App::list_jobs() { state_.jobs = hemline::list_jobs(options_.jobs_folder); }

void App::open_job(const std::filesystem::path& folder) {
    std::error_code not_there;
    if (journal_ && std::filesystem::equivalent(journal_->record().folder, folder, not_there)) {
        go({Place::roof, {}});  // it is open here already, and locked against a second opening
        return;
    }
    const auto opened = JournalFile::open(folder, options_.device, Opening::either);
    if (!opened) {
        state_.notice = opened.problem().what + " " + opened.problem().mend;
        return;
    }
    journal_ = *opened;
    state_.events = journal_->record().events;
    compute();
    go({Place::roof, {}});
    state_.saved = state_.events.empty() ? "nothing to save yet"
                                         : "saved " + clock_time(state_.events.back().when);
    for (const FileSetAside& stretch : journal_->record().set_aside) {
        state_.notice += (state_.notice.empty() ? "" : " ") + explain(stretch);
    }
    if (!state_.events.empty() && !state_.events.back().by.empty()) {
        state_.by = state_.events.back().by;
    }
}

void App::start_job(const std::string& name) {
    open_job(new_job_folder(options_.jobs_folder, name));
    if (journal_ && state_.events.empty() && append(JobStarted{name, "common practice"}, {})) {
        go({Place::add_edge, {}});
    }
}

void App::start_demo() {
    const Result<DemoRoof> demo = read_demo(assets_);
    if (!demo) {
        state_.notice = demo.problem().what + " " + demo.problem().mend;
        return;
    }
    open_job(new_job_folder(options_.jobs_folder, demo->name));
    if (!journal_ || !state_.events.empty()) {
        return;
    }
    bool saved = append(JobStarted{demo->name, "common practice"}, {});
    for (const Edge& edge : demo->edges) {
        saved = saved && append(EdgeAdded{edge}, {});
    }
    if (saved) {
        go({Place::roof, {}});
    }
}

bool App::append(const Fact& fact, const std::vector<EventId>& supersedes) {
    if (!journal_) {
        state_.notice = "No job is open. Open or start one first.";
        return false;
    }
    const Result<Event> saved = journal_->append(fact, state_.by, supersedes, options_.wall_ms());
    state_.save_failed = !saved.ok();
    if (!saved) {
        state_.saved = "not saved";
        state_.notice = saved.problem().what + " " + saved.problem().mend;
        return false;
    }
    state_.events = journal_->record().events;
    state_.saved = "saved " + clock_time(saved->when);
    compute();
    return true;
}

void App::undo() {
    const std::optional<EventId> target = undo_target(state_.events, options_.device);
    if (target && append(Struck{*target, "undone"}, {*target})) {
        go({Place::history, {}});
    }
}

void App::compute() {
    state_.job = replay(state_.events, assets_.practice);
    state_.plan = make_plan(state_.job, assets_.catalogue);
    state_.undo_target = undo_target(state_.events, options_.device);
}

}  // namespace hemline
