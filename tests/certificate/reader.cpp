#include "tests/certificate/reader.h"

#include <algorithm>
#include <map>

#include "tests/certificate/length.h"
#include "tests/certificate/task.h"
#include "tests/certificate/wrong.h"

namespace certificate {

namespace {

using Json = nlohmann::json;
__extension__ using Wide = __int128;

/// Lengths and how many of each.
using Tally = std::map<Int, Int>;

Tally tally_of(const Pieces& pieces) {
    Tally tally;
    for (const auto& [length, count] : pieces) {
        tally[length] += count;
    }
    return tally;
}

Pieces pieces_in(const Json& list) {
    Pieces pieces;
    for (const Json& own : list) {
        pieces.emplace_back(own.at("length").get<Int>(), own.at("count").get<Int>());
    }
    return pieces;
}

/// Sticks laid out, and of these how many that are not on hand.
struct Laid {
    Int sticks = 0, fresh = 0;
};

Laid check_layouts(const Pieces& pieces, const Task& task, const Json& plan, Wrong& wrong) {
    Laid laid;
    Tally cut = tally_of(pieces_in(plan.at("missing")));
    std::map<std::pair<Int, bool>, Int> used;
    for (const Json& layout : plan.at("layouts")) {
        const Int times = layout.at("times").get<Int>(),
                  room = layout.at("stock").get<Int>() + task.kerf;
        const bool on_hand = layout.at("on_hand").get<bool>();
        Int needs = 0;
        for (const Json& length : layout.at("cuts")) {
            needs += length.get<Int>() + task.kerf;
            cut[length.get<Int>()] += times;
        }
        wrong.unless(times > 0 && needs > 0, "a layout of nothing");
        wrong.unless(needs <= room, "pieces overlap or run past the end of a stick");
        used[{room, on_hand}] += times;
        laid.sticks += times;
        laid.fresh += on_hand ? 0 : times;
    }
    wrong.unless(cut == tally_of(pieces), "not every piece lies once on one stick");
    for (const auto& [key, times] : used) {
        const auto sticks =
            std::find_if(task.sticks.begin(), task.sticks.end(), [&key = key](const Sticks& s) {
                return s.room == key.first && s.on_hand == key.second;
            });
        const bool there = sticks != task.sticks.end();
        wrong.unless(there, "a stick of no stock");
        wrong.unless(!there || sticks->unlimited || times <= sticks->supply,
                     "more sticks than there are");
    }
    return laid;
}

/// New sticks that any plan needs, by the worths alone.
Int bound_by_worths(const Task& task, Wrong& wrong) {
    wrong.unless(task.share > 0, "a share not above 0");
    Wide worth = 0;
    for (const Kind& kind : task.kinds) {
        wrong.unless(kind.worth >= 0, "a worth below 0");
        worth += static_cast<Wide>(kind.worth) * kind.count;
    }
    for (const Sticks& sticks : task.sticks) {
        wrong.unless(sticks.supply == 0 || most_worth(task, sticks.room) <= sticks.holds_at_most,
                     "a stick can hold more worth than is said");
        const Int over = sticks.holds_at_most - (sticks.on_hand ? 0 : task.share);
        wrong.unless(over <= 0 || !sticks.unlimited || sticks.on_hand,
                     "a new stick without limit holds more than its share");
        worth -= static_cast<Wide>(sticks.supply) * std::max<Int>(over, 0);
    }
    return worth <= 0 || task.share <= 0 ? 0
                                         : static_cast<Int>((worth + task.share - 1) / task.share);
}

void check_bound(const Json& certificate, const Task& task, Wrong& wrong) {
    const Int by_worths = certificate.at("bound_by_worths").get<Int>();
    const Int refuted = certificate.at("refuted").get<Int>();
    wrong.unless(by_worths >= 0 && refuted >= 0, "a count below 0");
    wrong.unless(bound_by_worths(task, wrong) >= by_worths, "the worths do not reach the bound");
    wrong.unless(certificate.at("new_lower_bound").get<Int>() == by_worths + refuted,
                 "the bound is not what worths and search reach");
    for (Int n = 0; n < refuted && wrong.all.empty(); ++n) {
        const Searched searched = search_again(task, by_worths + n, 100'000'000);
        wrong.unless(searched != Searched::plan, "a count called impossible has a plan");
        wrong.unless(searched != Searched::not_finished, "a search was too long to repeat");
    }
}

void check_counts(const Json& said, const Laid& laid, Wrong& wrong) {
    const Int sticks = said.at("sticks").get<Int>(), fresh = said.at("new_sticks").get<Int>();
    const Int bound = said.at("lower_bound").get<Int>();
    const Int fresh_bound = said.at("new_lower_bound").get<Int>();
    const bool proved = said.at("proved").get<bool>();
    const bool whole = said.at("missing").empty();
    wrong.unless(sticks == laid.sticks && fresh == laid.fresh, "sticks miscounted");
    wrong.unless(bound - fresh_bound == laid.sticks - laid.fresh,
                 "the bound does not count the sticks on hand that are used");
    wrong.unless(proved == (whole && sticks == bound && fresh == fresh_bound),
                 "proved, or not, against its own figures");
    wrong.unless(!whole || sticks >= bound, "fewer than the bound");
}

}  // namespace

Pieces read_pieces(const std::string& csv, Int unit_nm) {
    const Table table = read_table(csv);
    const std::size_t length = table.column("length"), count = table.column("count");
    Pieces pieces;
    for (const std::vector<Cell>& row : table.rows) {
        pieces.emplace_back(length_nm(row[length], unit_nm), whole(row[count]));
    }
    return pieces;
}

std::vector<std::string> wrong_with(const Pieces& pieces, const Json& certificate,
                                    const Json& plan) {
    Wrong wrong;
    try {
        const Task task = task_of(certificate);
        wrong.unless(tally_of(pieces) == tally_of(pieces_in(certificate.at("pieces"))),
                     "the certificate is of other pieces");
        for (const Json* said : {&certificate, &plan}) {
            check_counts(*said, check_layouts(pieces, task, *said, wrong), wrong);
        }
        wrong.unless(certificate.at("new_lower_bound") == plan.at("new_lower_bound"),
                     "plan and certificate name different bounds");
        check_bound(certificate, task, wrong);
    } catch (const std::exception& problem) {
        wrong.all.emplace_back(problem.what());
    }
    return wrong.all;
}

}  // namespace certificate
