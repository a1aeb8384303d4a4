// Drafts of the people's screens: who holds the tablet, what is to be fixed, which day is shown.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/record/moment.h"
#include "field/state/name_draft.h"
#include "field/store/people.h"

namespace hemline {

struct PersonDraft {
    NameDraft name;
    std::optional<Way> way;   ///< what the person is to do, when it is chosen
    bool naming_job = false;  ///< the name is a new job's, not a person's
};

struct SendBackDraft {
    NameDraft reason;
};

struct DayDraft {
    std::optional<std::int64_t> ms;  ///< a time on the day that is shown
};

/// Which page of the day's safety questions is shown.
enum class GatePage { checks, watcher, hospital, dew };

struct GateDraft {
    std::string by;           ///< whose answers they are,
    std::int64_t day_ms = 0;  ///< and of which day: when it began
    std::string found;        ///< a letter for each check: y, n, or anything else for not answered
    std::string watcher, hospital;
    NameDraft words;                       ///< a name or a street being keyed in,
    GatePage words_of = GatePage::checks;  ///< on that page
    GatePage page = GatePage::checks;
    std::string air, humidity;  ///< digits: °F, percent
    bool humidity_next = false;
};

/// An edge's values.
struct ValuesDraft {
    bool within = false;  ///< those within practice are opened
};

struct HistoryDraft {
    std::optional<EventId> entry;  ///< the one that was touched
};

struct PeopleDrafts {
    HistoryDraft history;
    ValuesDraft values;
    PersonDraft person;
    SendBackDraft send_back;
    DayDraft day;
    GateDraft gate;
};

}  // namespace hemline
