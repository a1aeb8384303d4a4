#include "engine/roof/outline_suspects.h"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "engine/require.h"
#include "engine/roof/nearest.h"
#include "engine/roof/other_readings.h"

namespace hemline {

namespace {

bool has_contradiction(const Walk& walk) {
    return std::any_of(walk.sides.begin(), walk.sides.end(),
                       [](const WalkSide& side) { return side.after.against.has_value(); });
}

bool closes(const Walk& walk, const Closing& closing) {
    return closing.turns_close && closing.lies_within && !has_contradiction(walk);
}

double size_of(PlanVector miss) { return std::hypot(miss.x, miss.y); }

/// A suspect with the values it is ordered by: the smaller, the likelier.
struct Ranked {
    Suspect suspect;
    std::int64_t unlikely = 0;       ///< by its kind
    std::int64_t left_permille = 0;  ///< relative to what the readings allow in that direction
    Length reading;
};

std::int64_t unlikely_by(SuspectKind kind, std::int64_t units_off) {
    switch (kind) {
        case SuspectKind::contradiction:
            return 0;
        case SuspectKind::burnt_inch:
        case SuspectKind::wrong_turn:
            return 10;
        case SuspectKind::misread_foot:
        case SuspectKind::misread_metre:
            return units_off == 1 ? 10 : 20 + units_off;
        case SuspectKind::swapped_digits:
            return 12;
        case SuspectKind::misread_decimetre:
            return units_off == 1 ? 14 : 30 + units_off;
        case SuspectKind::misread_inch:
        case SuspectKind::misread_centimetre:
            return units_off == 1 ? 16 : 40 + units_off;
    }
    stop("a suspect without its rank");
}

/// The corrected walk's suspect when it closes.
std::optional<Ranked> ranked_when_closed(const Walk& corrected, Suspect suspect,
                                         std::int64_t units_off) {
    const Closing closing = close_walk(corrected);
    if (!closes(corrected, closing)) {
        return {};
    }
    Ranked ranked;
    const double left = size_of(closing.unexplained);
    suspect.miss = nearest_nm(left);
    if (left > 0) {
        const PlanVector way{closing.unexplained.x / left, closing.unexplained.y / left};
        ranked.left_permille = std::llround(1000 * left / reach_along(corrected, closing, way));
    }
    ranked.unlikely = unlikely_by(suspect.kind, units_off);
    ranked.reading = suspect.from;
    ranked.suspect = std::move(suspect);
    return ranked;
}

/// How many other sides of the same kind have this length, within what the tape allows.
int twins_of(const Walk& walk, std::size_t at, Length length) {
    const auto kind = [&](const WalkSide& side) { return walk.edges[*side.edge].edge.kind; };
    int twins = 0;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkSide& side = walk.sides[i];
        const bool like = i != at && side.length && kind(side) == kind(walk.sides[at]);
        if (like && static_cast<double>(absolute(*side.length - length).nm()) <=
                        2 * side.tape_nm / side.plan_of_one) {
            ++twins;
        }
    }
    return twins;
}

void add_lengths(std::vector<Ranked>& found, const Walk& walk, const Closing& closing) {
    const double miss = size_of(closing.unexplained);
    if (!closing.turns_close || miss <= 0) {
        return;  // no length corrects a turn
    }
    const PlanVector out{closing.unexplained.x / miss, closing.unexplained.y / miss};
    const ReadIn units = read_in(walk);
    Walk corrected = walk;
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkSide& side = walk.sides[i];
        const double along = closing.ways[i].x * out.x + closing.ways[i].y * out.y;
        if (!side.length || std::abs(along) < 1e-6) {
            continue;
        }
        // Unread sides all run one way, so `out` is either the miss or square to that way, and
        // this is the change that brings the side's part of it to 0.
        const bool free = freedom_of(closing) == Freedom::along_one_way;
        const double change = -miss * (free ? 1 / along : along) / side.plan_of_one;
        const Length wanted = nearest_nm(std::clamp(change, -1e12, 1e12));
        for (const OtherReading& other : other_readings(*side.length, wanted, units)) {
            corrected.sides[i].length = other.length;
            Suspect suspect;
            suspect.edge = walk.edges[*side.edge].edge.id;
            suspect.field = "length";
            suspect.kind = other.kind;
            suspect.from = *side.length;
            suspect.to = other.length;
            if (auto ranked = ranked_when_closed(corrected, suspect, other.units_off)) {
                const int gained =
                    twins_of(walk, i, other.length) - twins_of(walk, i, *side.length);
                ranked->unlikely -= std::int64_t{2} * std::clamp(gained, -2, 2);
                found.push_back(std::move(*ranked));
            }
        }
        corrected.sides[i].length = side.length;
    }
}

/// The turn after side `i`, as the row that claims it states it.
Suspect turn_of(const Walk& walk, std::size_t i, CornerClaim claim, SuspectKind kind) {
    const bool before = claim.row == CornerClaim::Row::before;
    const WalkSide& side = walk.sides[before ? i : (i + 1) % walk.sides.size()];
    Suspect suspect;
    suspect.edge = walk.edges[side.edge.value()].edge.id;
    suspect.field = (claim.by == CornerClaim::By::angle ? "corner_" : "") +
                    std::string(word_of(before ? finish_of(side) : start_of(side)));
    suspect.kind = kind;
    return suspect;
}

void add_turns(std::vector<Ranked>& found, const Walk& walk) {
    Walk corrected = walk;
    const auto try_turn = [&](Suspect suspect, std::size_t i, Angle from, Angle to) {
        suspect.corner_from = from;
        suspect.corner_to = to;
        if (auto ranked = ranked_when_closed(corrected, std::move(suspect), 1)) {
            found.push_back(std::move(*ranked));
        }
        corrected.sides[i].after = walk.sides[i].after;
    };
    for (std::size_t i = 0; i < walk.sides.size(); ++i) {
        const WalkCorner& corner = walk.sides[i].after;
        if (!corner.inside || !corner.claim) {
            continue;
        }
        WalkCorner& mended = corrected.sides[i].after;
        const Angle taken = *corner.inside;
        if (!corner.against) {
            if (taken != half_turn) {
                Suspect wrong = turn_of(walk, i, *corner.claim, SuspectKind::wrong_turn);
                if (corner.second) {
                    const Suspect also = turn_of(walk, i, *corner.second, wrong.kind);
                    wrong.also_edge = also.edge;
                    wrong.also_field = also.field;
                }
                mended.inside = full_turn - taken;
                try_turn(wrong, i, taken, full_turn - taken);
            }
            continue;
        }
        // Either claim may be wrong.
        mended.against.reset();
        try_turn(turn_of(walk, i, corner.against_claim, SuspectKind::contradiction), i,
                 *corner.against, taken);
        mended.against.reset();
        mended.inside = corner.against;
        try_turn(turn_of(walk, i, *corner.claim, SuspectKind::contradiction), i, taken,
                 *corner.against);
    }
}

}  // namespace

std::vector<Suspect> find_suspects(const Walk& walk) {
    const Closing closing = close_walk(walk);
    if (!closing.turn_left || closes(walk, closing)) {
        return {};
    }
    std::vector<Ranked> found;
    add_lengths(found, walk, closing);
    add_turns(found, walk);
    std::stable_sort(found.begin(), found.end(), [](const Ranked& a, const Ranked& b) {
        // Closeness counts in tenths of what is allowed: 0.1 more left counts as one rank.
        const std::int64_t a_all = a.unlikely * 100 + a.left_permille;
        const std::int64_t b_all = b.unlikely * 100 + b.left_permille;
        return std::tuple(a_all, -a.reading.nm()) < std::tuple(b_all, -b.reading.nm());
    });
    std::vector<Suspect> suspects;
    for (Ranked& ranked : found) {
        const bool known =
            std::any_of(suspects.begin(), suspects.end(), [&](const Suspect& suspect) {
                return suspect.edge == ranked.suspect.edge &&
                       suspect.field == ranked.suspect.field && suspect.to == ranked.suspect.to &&
                       suspect.corner_to == ranked.suspect.corner_to;
            });
        if (!known) {
            suspects.push_back(std::move(ranked.suspect));
        }
    }
    return suspects;
}

std::string_view word_of(SuspectKind kind) {
    switch (kind) {
        case SuspectKind::contradiction:
            return "contradiction";
        case SuspectKind::burnt_inch:
            return "burnt_inch";
        case SuspectKind::misread_foot:
            return "misread_foot";
        case SuspectKind::misread_inch:
            return "misread_inch";
        case SuspectKind::misread_metre:
            return "misread_metre";
        case SuspectKind::misread_decimetre:
            return "misread_decimetre";
        case SuspectKind::misread_centimetre:
            return "misread_centimetre";
        case SuspectKind::swapped_digits:
            return "swapped_digits";
        case SuspectKind::wrong_turn:
            return "wrong_turn";
    }
    stop("a suspect without its word");
}

Text spoken(SuspectKind kind) {
    switch (kind) {
        case SuspectKind::contradiction:
            return say("the rows contradict one another");
        case SuspectKind::burnt_inch:
            return say("burnt inch");
        case SuspectKind::misread_foot:
            return say("misread foot");
        case SuspectKind::misread_inch:
            return say("misread inch");
        case SuspectKind::misread_metre:
            return say("misread meter");
        case SuspectKind::misread_decimetre:
            return say("misread decimetre");
        case SuspectKind::misread_centimetre:
            return say("misread centimetre");
        case SuspectKind::swapped_digits:
            return say("two digits changed places");
        case SuspectKind::wrong_turn:
            return say("wrong turn");
    }
    stop("a suspect without its word");
}

}  // namespace hemline
