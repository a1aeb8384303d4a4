// The app's dealings outside the open job: the crew folder, job files, another folder to go on in;
// and what stands of what was made apart.
#include <algorithm>

#include "engine/plan/plan_changes.h"
#include "engine/record/pick.h"
#include "field/app/app.h"
#include "field/screens/page/frame.h"
#include "field/state/plan_news.h"
#include "field/store/disk_problem.h"
#include "field/store/folders.h"
#include "field/store/writer.h"

namespace hemline {

namespace {

namespace fs = std::filesystem;

Text events(std::size_t n) {
    return say_count("{1} event", "{1} events", static_cast<std::int64_t>(n));
}

}  // namespace

std::uint64_t App::writer() const { return journal_ ? journal_->device() : options_.device; }

/// Carries the open job, all of it saved, to and from the crew folder.
void App::carry() {
    if (!journal_ || !under_way_.empty() || !state_.outside.kept.crew ||
        journal_->record().events.empty()) {
        return;
    }
    const JobRecord& record = journal_->record();
    if (crew_.is_started()) {
        crew_.give(record.events);
    } else {
        crew_.start({*state_.outside.kept.crew, record.folder, journal_->device()}, options_.disk,
                    record.events);
    }
}

void App::hear_crew() {
    if (!under_way_.empty()) {
        return;  // the save that returns wakes the screen once more
    }
    const std::optional<CrewNews> news = crew_.news();
    if (!news || !journal_) {
        return;
    }
    Outside& outside = state_.outside;
    outside.crew_failed = news->problem.has_value();
    if (news->problem) {
        outside.crew_said = said(*news->problem);
    } else {
        outside.crew_said = say("Took in {1}, gave out {2}, at {3}.", events(news->taken_in.size()),
                                news->given_out, clock_time({options_.wall_ms()}));
    }
    if (!news->taken_in.empty()) {
        const Plan before = state_.plan;
        const std::int64_t sticks_before = sticks_in_all(state_.job, before);
        journal_->take_in(news->taken_in);
        state_.events = journal_->record().events;
        compute();
        outside.crew_new += static_cast<std::int64_t>(news->taken_in.size());
        // Someone may hold the tape to a card that has just changed.
        add_notice(plan_news(state_, Unknown{}, before, sticks_before));
    }
    if (news->number_used_elsewhere) {
        write_under_new_number();
    }
}

/// This tablet was copied or put back from a backup: others hold events under its number that it
/// never wrote.
void App::write_under_new_number() {
    const fs::path folder = journal_->record().folder;
    crew_.stop();
    const Result<std::uint64_t> number = new_writer(*options_.disk, folder, options_.device);
    if (!number) {
        state_.outside.crew_failed = true;
        state_.outside.crew_said = said(number.problem());
        return;
    }
    journal_.reset();
    if (open_journal(folder)) {
        add_notice(
            say("This tablet was copied or put back from a backup: it writes on as device {1}.",
                print_device(*number)));
    }
}

void App::pick(EventId chosen) {
    const Result<ToWrite> picked = hemline::pick(state_.job, state_.events, chosen);
    if (!picked) {
        state_.notice = said(picked.problem());
        return;
    }
    const Where here = state_.where;
    if (append(picked->fact, picked->supersedes)) {
        go(here);
    }
}

void App::keep_folders() {
    if (const auto problem = options_.hand_over.keep(state_.outside.kept)) {
        add_notice(said(*problem));
    }
}

/// What the screen of handing over lists.
void App::look_outside() {
    Outside& outside = state_.outside;
    const Place place = state_.where.place;
    if (place != Place::hand_over) {
        outside.done = {};
        return;
    }
    outside.files.clear();
    outside.in_crew.clear();
    if (outside.kept.hand_over) {
        if (const auto files = job_files_in(*outside.kept.hand_over)) {
            outside.files = *files;
        } else {
            add_notice(said(files.problem()));
        }
    }
    if (outside.kept.crew) {
        if (const auto jobs = options_.hand_over.in_crew(*outside.kept.crew)) {
            outside.in_crew = *jobs;
        } else {
            add_notice(said(jobs.problem()));
        }
    }
    show_jobs();
    for (const fs::path& job : state_.jobs) {
        const Result<JobRecord> record = read_job_folder(job);
        for (const Event& event : record ? record->events : std::vector<Event>()) {
            if (std::holds_alternative<JobStarted>(event.fact)) {
                const std::string id = print_event_id(event.id);
                outside.in_crew.erase(
                    std::remove_if(outside.in_crew.begin(), outside.in_crew.end(),
                                   [&](const JobInCrew& there) { return there.id == id; }),
                    outside.in_crew.end());
            }
        }
    }
}

void App::act_outside(const OutsideWish& wish) {
    using Deed = OutsideWish::Deed;
    switch (wish.deed) {
        case Deed::put_into_file:
            put_into_file();
            break;
        case Deed::take_file:
        case Deed::join_crew_job:
            take_in(wish);
            break;
        case Deed::choose:
            choose(wish.choosing);
            break;
        case Deed::look_into:
            state_.outside.view = look_into(wish.path);
            break;
        case Deed::use:
            use_folder(wish.path);
            break;
        case Deed::leave:
            leave_folder();
            break;
        case Deed::forget_crew:
            crew_.stop();
            state_.outside.kept.crew.reset();
            state_.outside.crew_said = {};
            go({Place::hand_over, {}});
            keep_folders();
            break;
    }
}

/// The draft on the screen is put aside, not dropped: the way out of a full disk begins here.
void App::choose(Choosing choosing) {
    Outside& outside = state_.outside;
    if (!outside.there) {
        return;
    }
    aside_ = Aside{state_.where, drafts_, state_.notice};
    outside.choosing = choosing;
    const Places places = places_here();
    outside.places = places.folders;
    const std::optional<fs::path> used = choosing == Choosing::crew        ? outside.kept.crew
                                         : choosing == Choosing::hand_over ? outside.kept.hand_over
                                                                           : std::nullopt;
    const fs::path home = outside.places.empty() ? fs::path("/") : outside.places.front();
    std::error_code error;
    outside.view = look_into(used && fs::is_directory(*used, error) ? *used : home);
    state_.where = {Place::folder, {}};
    state_.notice = places.problem ? said(*places.problem) : Text();
}

void App::leave_folder() {
    if (!aside_) {
        go({Place::jobs, {}});
        return;
    }
    const Aside back = std::move(*aside_);
    aside_.reset();
    go(back.where);
    drafts_ = back.drafts;
    state_.notice = back.notice;
}

void App::use_folder(const fs::path& folder) {
    Outside& outside = state_.outside;
    if (outside.choosing == Choosing::go_on) {
        go_on_in(folder);
        return;
    }
    if (outside.choosing == Choosing::crew) {
        crew_.stop();
        outside.kept.crew = folder;
        outside.crew_said = {};
    } else {
        outside.kept.hand_over = folder;
    }
    leave_folder();
    state_.notice = {};
    keep_folders();
    carry();
}

/// Copies what is saved of the job there and opens it there, with the draft as it was.
void App::go_on_in(const fs::path& folder) {
    Outside& outside = state_.outside;
    if (!outside.stuck) {
        leave_folder();
        return;
    }
    const bool is_open = journal_ && journal_->record().folder == *outside.stuck;
    const Result<WentOn> there = options_.hand_over.go_on_in(
        *outside.stuck, folder, is_open ? journal_->refused() : std::nullopt);
    if (!there || !open_journal(there->job)) {
        state_.notice = there ? state_.notice : said(there.problem());
        return;
    }
    outside.kept.jobs.push_back(there->job);
    leave_folder();
    if (state_.where.place == Place::jobs) {  // it could not be opened where it was
        go({Place::roof, {}});
    }
    state_.notice =
        say("The job goes on in {1}. What was saved before stands in both. Keep again what is on "
            "the screen.",
            shown(there->job));
    add_notice(there->said);
    keep_folders();
}

void App::put_into_file() {
    Outside& outside = state_.outside;
    if (!journal_ || !outside.kept.hand_over || !settle()) {
        return;
    }
    const auto put = options_.hand_over.put_into_file(journal_->record().folder,
                                                      *outside.kept.hand_over, journal_->refused());
    go({Place::hand_over, {}});
    if (put) {
        outside.done =
            say("{1} lies there now: {2}, {3} kB. It opens as a zip anywhere: read job.html in it.",
                shown(put->file.filename()), events(put->events), (put->bytes + 1023) / 1024);
    } else {
        state_.notice = said(put.problem());
    }
}

/// The open job is closed for it, since it may be the one that is taken into.
void App::take_in(const OutsideWish& wish) {
    if (!settle()) {
        return;
    }
    const bool was_open = journal_ != nullptr;
    fs::path open = was_open ? journal_->record().folder : fs::path();
    crew_.stop();
    journal_.reset();
    const std::optional<Problem> unlisted = list_jobs();
    const auto& deeds = options_.hand_over;
    const Result<TakenIn> taken =
        unlisted ? Result<TakenIn>(*unlisted)
        : wish.deed == OutsideWish::Deed::take_file
            ? deeds.take_file(wish.path, state_.jobs)
            : deeds.join_crew_job(state_.outside.kept.crew.value_or(""), wish.job, state_.jobs);
    if (taken) {
        open = taken->job;
    }
    const bool opened = (taken || was_open) && open_journal(open);
    const Text trouble = opened || !(taken || was_open) ? Text() : state_.notice;
    go({Place::hand_over, {}});
    state_.notice = taken ? trouble : said(taken.problem());
    if (taken && opened) {
        state_.outside.done = taken->is_new ? say("{1} is on this tablet now, with {2}.",
                                                  state_.job.name, events(taken->new_events))
                                            : say("{1} took in {2} more.", state_.job.name,
                                                  events(taken->new_events));
        state_.outside.done = joined({state_.outside.done, taken->said}, " ");
    }
}

}  // namespace hemline
