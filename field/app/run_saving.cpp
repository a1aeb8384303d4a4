// Hands facts to the journal's saver, and tells what comes back.
#include "engine/words/result.h"
#include "field/app/app.h"

namespace hemline {

void App::run(const deed::Append& append) {
    if (!journal_) {
        return;
    }
    const Result<Event> event =
        journal_->hand_over(append.fact, append.by, append.supersedes, options_.wall_ms());
    const std::vector<Event>& events = journal_->record().events;
    if (!event) {
        if (settle()) {  // what was entered before it stands
            tell(news::NotHandedOver{openings_, event.problem(), events});
        }
        return;
    }
    const auto known = static_cast<std::ptrdiff_t>(state().events.size());
    tell(news::HandedOver{openings_, {events.begin() + known, events.end()}});
    hear_saves();
}

void App::hear_saves() {
    if (!journal_) {
        return;
    }
    const std::vector<SaveReturned> returned = journal_->returned();
    if (returned.empty()) {
        return;
    }
    news::SavesReturned news{openings_};
    for (const SaveReturned& back : returned) {
        if (back.problem) {
            news.problem = back.problem;
            news.events = journal_->record().events;
            break;
        }
        ++news.saved;
    }
    tell(news);
}

bool App::settle() {
    if (!journal_) {
        return true;
    }
    journal_->settle();
    const bool was_failed = state().saving == Saving::failed;
    hear_saves();
    return was_failed || state().saving != Saving::failed;
}

}  // namespace hemline
