// The record of an invented shed: four edges, the walk round it, which edge its ridge is, and a
// porch that runs into it.
#pragma once

#include "engine/body/body_sides.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {

inline SideWalked walked_side(const char* id, SideKind kind, std::optional<Length> length) {
    SideWalked side;
    side.id = id;
    side.edges = {id};
    side.kind = kind;
    side.length = length;
    return side;
}

/// A gable roof, 30 ft by 20 ft; both eaves with the pitch of the first.
inline BodyWalked shed_walked() {
    BodyWalked walked{"1", {}, true, {}};
    walked.sides = {walked_side("A", SideKind::eave, feet(30)),
                    walked_side("B", SideKind::gable, feet(20)),
                    walked_side("C", SideKind::eave, {}), walked_side("D", SideKind::gable, {})};
    walked.sides[1].edges = {"B", "B2"};
    walked.sides[0].pitch = rise_in_12(6);
    walked.sides[2].pitch_from = "A";
    return walked;
}

inline std::vector<Event> body_record() {
    std::vector<Event> events;
    const auto add = [&](Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'820'000'000'000 + number, number % 3},
                          "Ada",
                          {},
                          std::move(fact)});
        events.back().moment = Moment{{1'820'000'000'000 + number}, {}};
    };
    for (const char* id : {"A", "B", "C", "D"}) {
        Edge edge = invented_eave();
        edge.id = id;
        add(EdgeAdded{edge});
    }
    add(shed_walked());
    Edge ridge = invented_eave();
    ridge.id = "E";
    ridge.kind = EdgeKind::ridge;
    add(EdgeAdded{ridge});
    add(EdgePlaced{"E", {"1", "A", "C", 0}});
    BodyWalked porch = shed_walked();
    porch.body = "2";
    porch.sides[0].kind = SideKind::open;
    porch.sides[1].meets = "A";
    porch.sides[3].corner = microdegrees(90'500'000);
    porch.host = HostSaid{"A", feet(5), feet(-2), inches(0)};
    add(porch);
    return events;
}

}  // namespace hemline
