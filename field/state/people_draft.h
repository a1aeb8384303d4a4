// Drafts of the people's screens: who holds the tablet, what is to mend, which day is looked at.
#pragma once

#include <cstdint>
#include <optional>

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
    std::optional<std::int64_t> ms;  ///< a time on the day that is looked at
};

struct PeopleDrafts {
    PersonDraft person;
    SendBackDraft send_back;
    DayDraft day;
};

}  // namespace hemline
