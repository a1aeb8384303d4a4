// The program as it was left: saved beside the jobs while it runs, and gone back to at a start.
#include <algorithm>

#include "field/app/app.h"
#include "field/state/edge_view.h"
#include "field/store/clock.h"
#include "field/store/folders.h"

namespace hemline {

LeftOff App::left_off() const {
    LeftOff left{"", options_.wall_ms(), state_.where, drafts_};
    const bool outside = state_.where.place == Place::jobs || state_.where.place == Place::folder;
    if (journal_ && !outside) {
        left.job = journal_->record().folder.filename().string();
    }
    return left;
}

void App::go_back_to(const LeftOff& left) {
    const DaySpan today = day_around(options_.wall_ms());
    const auto job = std::find_if(state_.jobs.begin(), state_.jobs.end(), [&](const auto& folder) {
        return folder.filename().string() == left.job;
    });
    if (left.job.empty() || job == state_.jobs.end() || !today.holds({left.wall_ms})) {
        return;
    }
    open_job(*job);
    const bool is_there = left.where.edge.empty() || edge_of(state_, left.where.edge) != nullptr;
    if (!journal_ || !is_there || left.where.place == Place::person) {
        return;
    }
    const Text notice = state_.notice;  // a torn tail was set aside, …
    go(left.where);
    state_.notice = notice;
    drafts_.length = left.drafts.length;
    drafts_.field_opened = left.drafts.field_opened;
    drafts_.keys_out = left.drafts.keys_out;
    drafts_.pitch_number = left.drafts.pitch_number;
    drafts_.pitch_notation = left.drafts.pitch_notation;
    drafts_.typed = left.drafts.typed;
    drafts_.count = left.drafts.count;
    drafts_.rule = left.drafts.rule;
}

}  // namespace hemline
