// update() without a window, a disk or a clock: news in, the session and the deeds out.
#pragma once

#include <doctest/doctest.h>

#include "engine/record/frame.h"
#include "field/update/held_by.h"
#include "field/update/update.h"
#include "tests/field/app/journey.h"

namespace hemline {

/// A session at the start of a program, held by the installer.
inline Session new_session(const std::string& by = "Installer") {
    Session session;
    const Assets assets = assets_read();
    session.state.catalogue = assets.catalogue;
    session.state.sections = assets.sections;
    session.state.assets = std::make_shared<const Assets>(assets);
    session.px_per_mm = 6;
    if (!by.empty()) {
        held_by(session, {by, Way::cut});
    }
    return session;
}

/// What an update leaves.
struct Told {
    Session session = new_session();
    std::vector<Deed> deeds;  ///< of the last news

    void tell(const News& what) {
        Updated now = update(std::move(session), what);
        session = std::move(now.session);
        deeds = std::move(now.deeds);
    }
    template <class Wanted>
    [[nodiscard]] const Wanted* wants() const {
        for (const Deed& deed : deeds) {
            if (const auto* const wanted = std::get_if<Wanted>(&deed)) {
                return wanted;
            }
        }
        return nullptr;
    }
    /// The job with that number is open, and holds these events.
    void open(int job, std::vector<Event> events) {
        JobRecord record;
        record.folder = "/jobs/a";
        record.events = std::move(events);
        tell(news::Opened{job, record, 1, {}, opened_for::Touch{}});
    }
};

inline Event event_of(std::uint32_t sequence, Fact fact) {
    Event event{{1, sequence}, {}, "Installer", {}, std::move(fact)};
    event.when.wall_ms = 1'760'000'000'000 + sequence;
    return event;
}

inline Edge eave(const std::string& id) {
    Edge edge;
    edge.id = id;
    return edge;
}

/// A job of that many eaves, A, B, …
inline std::vector<Event> job_of(int edges) {
    std::vector<Event> events = {event_of(1, JobStarted{"A roof", "common practice"})};
    for (int i = 0; i < edges; ++i) {
        events.push_back(event_of(static_cast<std::uint32_t>(i + 2),
                                  EdgeAdded{eave(std::string(1, static_cast<char>('A' + i)))}));
    }
    return events;
}

}  // namespace hemline
