// What is half keyed in waits where it was keyed in: on every screen that is left, and in the file
// of where the program was left.
#include <algorithm>

#include "field/state/edge_view.h"
#include "field/state/keyed_in.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

/// Fields by which a screen is known again; the rest follows from the work on the edge.
Where place_of(const Where& where) {
    Where place = where;
    if (where.screen == Screen::steps || where.screen == Screen::reading) {
        place = {where.screen, where.edge};
        place.reading_of = where.reading_of;
    }
    return place;
}

std::string job_of_screen(Turn turn, Screen screen) {
    const std::optional<OpenedJob>& open = turn.session.open;
    return open && needs_job(screen) ? open->folder.string() : std::string();
}

std::vector<LeftAt>::iterator waiting_at(Turn turn, const Where& where) {
    const std::string job = job_of_screen(turn, where.screen);
    const Where place = place_of(where);
    std::vector<LeftAt>& aside = turn.session.laid_aside;
    return std::find_if(aside.begin(), aside.end(),
                        [&](const LeftAt& left) { return left.job == job && left.where == place; });
}

}  // namespace

void wait(Turn turn, LeftAt left) {
    std::vector<LeftAt>& aside = turn.session.laid_aside;
    aside.push_back(std::move(left));
    if (aside.size() > aside_most) {
        aside.erase(aside.begin());
    }
}

void forget_draft_at(Turn turn, const Where& where) {
    if (const auto waiting = waiting_at(turn, where); waiting != turn.session.laid_aside.end()) {
        turn.session.laid_aside.erase(waiting);
    }
}

void lay_aside(Turn turn) {
    const Where& where = turn.state.where;
    const bool has_place = where.screen != Screen::folder;  // what it came from is put aside whole
    if (has_place && is_keyed_in(turn.state, where, turn.session.drafts)) {
        forget_draft_at(turn, where);
        wait(turn, {job_of_screen(turn, where.screen), place_of(where), turn.session.drafts});
    }
    turn.session.drafts = {};
}

void take_up(Turn turn) {
    const auto waiting = waiting_at(turn, turn.state.where);
    const bool naming_job = turn.session.drafts.person.naming_job;
    if (waiting != turn.session.laid_aside.end() &&
        (turn.state.where.screen != Screen::person ||
         waiting->drafts.person.naming_job == naming_job)) {
        turn.session.drafts = std::move(waiting->drafts);
        turn.session.laid_aside.erase(waiting);
    }
}

void forget_withdrawn(Turn turn) {
    const std::string job = job_of_screen(turn, Screen::roof);
    std::vector<LeftAt>& aside = turn.session.laid_aside;
    const auto is_withdrawn = [&](const LeftAt& left) {
        return left.job == job && !left.where.edge.empty() &&
               edge_of(turn.state, left.where.edge) == nullptr;
    };
    aside.erase(std::remove_if(aside.begin(), aside.end(), is_withdrawn), aside.end());
}

void forget_drafts_of(Turn turn, const std::string& job) {
    std::vector<LeftAt>& aside = turn.session.laid_aside;
    aside.erase(std::remove_if(aside.begin(), aside.end(),
                               [&](const LeftAt& left) { return left.job == job; }),
                aside.end());
}

void move_drafts(Turn turn, const std::string& from, const std::string& to) {
    for (LeftAt& left : turn.session.laid_aside) {
        if (left.job == from) {
            left.job = to;
        }
    }
}

void on(Turn turn, const news::LeftThere& there) {
    const LeftOff& left = *there.left;
    const auto is_here = [&](const LeftAt& one) {
        const auto is_it = [&](const std::filesystem::path& job) { return job == one.job; };
        const auto& jobs = turn.state.jobs;
        const auto& elsewhere = turn.state.outside.kept.jobs;  // perhaps on a stick not plugged in
        return one.job.empty() || std::any_of(jobs.begin(), jobs.end(), is_it) ||
               std::any_of(elsewhere.begin(), elsewhere.end(), is_it) ||
               (turn.session.open && is_it(turn.session.open->folder));
    };
    for (const LeftAt& one : left.aside) {
        if (is_here(one)) {
            wait(turn, one);
        }
    }
    const std::optional<OpenedJob>& open = turn.session.open;
    if (left.job.empty() && !open && !needs_job(left.where.screen)) {
        go(turn, left.where);
        turn.session.drafts = left.drafts;
    } else if (!left.job.empty() && is_here(left)) {
        if (open && open->folder != left.job) {  // another job was asked for
            wait(turn, left);
        } else {
            turn.want(deed::Open{left.job, there.left});
        }
    }
}

}  // namespace hemline
