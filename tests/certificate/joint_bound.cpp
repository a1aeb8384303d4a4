// A joint bound by worths: what every edge takes at least, what every stick holds at most.
#include <algorithm>
#include <map>
#include <tuple>

#include "tests/certificate/joint_edge.h"
#include "tests/certificate/joint_regions.h"

namespace certificate {

namespace {

__extension__ using Wide = __int128;

constexpr Int laps_counted_most = 15;
/// A part that holds no plan at all bounds by more than any count.
constexpr Int no_plan = 1'000'000'000;
/// Worths above these could overflow a sum.
constexpr Int worth_most = Int{1} << 40, share_most = Int{1} << 58;

/// The most worth of pieces of any lengths and number in one stick: by how much is used, each more
/// than all that use less.
Int most_held(const JointWorths& worths, Int kerf, Int room) {
    std::vector<std::pair<Int, Int>> pieces;  // size and worth, the shortest of each worth
    for (std::size_t i = 0; i < worths.from.size(); ++i) {
        if (worths.worth[i] > (pieces.empty() ? 0 : pieces.back().second)) {
            pieces.emplace_back(worths.from[i] + kerf, worths.worth[i]);
        }
    }
    Int most = 0;
    std::map<Int, Int> held{{0, 0}};
    for (auto at = held.begin(); at != held.end(); ++at) {
        if (at->first > 0 && at->second <= most) {
            continue;
        }
        most = at->second;
        if (most > share_most) {
            break;
        }
        for (const auto& [size, worth] : pieces) {
            if (at->first + size <= room) {
                Int& own = held[at->first + size];
                own = std::max(own, at->second + worth);
            }
        }
    }
    return most;
}

constexpr Int length_most = Int{1} << 50;

/// The stick lies on the grid, and no length is past what the checks can count.
bool is_edge(const JointEdge& edge) {
    const bool is_taken =
        edge.taken && (edge.taken->laps < 0 || edge.taken->laps > laps_counted_most);
    return edge.grid > 0 && edge.stick > 0 && edge.stick % edge.grid == 0 &&
           edge.stick / edge.grid < 1'000'000 && edge.lap >= 0 && edge.lap < edge.stick &&
           edge.length > 0 && edge.length < 100'000 * (edge.stick - edge.lap) &&
           edge.length < length_most && edge.first >= 0 && edge.first < length_most &&
           edge.last >= 0 && edge.last < length_most && edge.sliver >= 0 && !is_taken;
}

bool are_worths(const JointWorths& worths, std::size_t sticks) {
    const auto rises = [](const std::vector<Int>& own, Int least, Int most) {
        return !own.empty() && own.front() >= least && own.back() <= most &&
               std::is_sorted(own.begin(), own.end());
    };
    const auto within = [](Int own, Int most) { return own >= 0 && own <= most; };
    return rises(worths.from, 1, share_most) && rises(worths.worth, 0, worth_most) &&
           worths.from.size() == worths.worth.size() && within(worths.lap, worth_most) &&
           within(worths.unbalanced, worth_most) && worths.share >= 1 &&
           worths.share <= share_most && worths.stick_worth.size() == sticks &&
           std::all_of(worths.stick_worth.begin(), worths.stick_worth.end(),
                       [&](Int own) { return within(own, share_most); });
}

/// Ranges whose ends rise, in classes of as many pieces.
bool are_ranges(const JointEdge& edge, const Region& region) {
    const Ranges& ranges = region.ranges;
    for (Int laps = 0; laps <= laps_counted_most && !ranges.empty(); ++laps) {
        if ((region.classes >> (2 * laps) & 3U) != 0 &&
            fewest_pieces(edge) + laps != static_cast<Int>(ranges.size())) {
            return false;
        }
    }
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        if (ranges[i].first < 0 || ranges[i].second < ranges[i].first ||
            (i > 0 &&
             (ranges[i].first < ranges[i - 1].first || ranges[i].second < ranges[i - 1].second))) {
            return false;
        }
    }
    return true;
}

class Bound {
  public:
    Bound(const JointTask& task, Int laps, Int unbalanced)
        : task_(task), laps_(laps), unbalanced_(unbalanced) {
        for (const JointEdge& edge : task.edges) {
            divisions_.push_back(divisions_of(edge, laps));
            Region region;
            for (const Listed& own : divisions_.back().listed) {
                region.classes |= 1U << class_of(own.laps, own.unbalanced);
            }
            for (const AnyWay& own : divisions_.back().any) {
                region.classes |= 1U << class_of(own.laps, own.unbalanced);
            }
            all_.push_back(region);
            longest_.push_back(edge.stick / edge.grid);
        }
    }
    [[nodiscard]] const std::vector<Region>& all() const { return all_; }
    [[nodiscard]] const std::vector<Int>& longest() const { return longest_; }

    /// New sticks that any plan needs that takes only the part's divisions.
    [[nodiscard]] Int of(const JointPart& part) const {
        const JointWorths& worths = part.worths;
        Wide sum = -static_cast<Wide>(laps_) * worths.lap -
                   static_cast<Wide>(unbalanced_) * worths.unbalanced;
        std::map<std::tuple<Int, Int, Int>, LeastWorth> least;
        for (std::size_t e = 0; e < task_.edges.size(); ++e) {
            const JointEdge& edge = task_.edges[e];
            const auto own = least.try_emplace({edge.grid, edge.stick, edge.sliver}, edge, worths);
            std::optional<Int> cheapest;
            for (const auto& [of_class, worth] : least_by_class(
                     divisions_[e], edge, worths, part.edges[e].ranges, own.first->second)) {
                if ((part.edges[e].classes >> of_class & 1U) != 0) {
                    cheapest = std::min(worth, cheapest.value_or(worth));
                }
            }
            if (!cheapest) {
                return no_plan;
            }
            sum += *cheapest;
        }
        for (std::size_t k = 0; k < task_.sticks.size(); ++k) {
            const JointStick& stick = task_.sticks[k];
            const Int over = worths.stick_worth[k] - (stick.on_hand ? 0 : worths.share);
            sum -= over > 0 ? static_cast<Wide>(over) * stick.supply.value_or(0) : Wide{0};
        }
        return sum <= 0 ? 0 : static_cast<Int>((sum + worths.share - 1) / worths.share);
    }

    /// No stick holds more than is said, and none without limit more than its share.
    [[nodiscard]] bool sticks_hold(const JointWorths& worths) const {
        for (std::size_t k = 0; k < task_.sticks.size(); ++k) {
            const JointStick& stick = task_.sticks[k];
            const Int said = worths.stick_worth[k];
            if (most_held(worths, task_.kerf, stick.length + task_.kerf) > said ||
                (!stick.supply && said > (stick.on_hand ? 0 : worths.share))) {
                return false;
            }
        }
        return true;
    }

  private:
    const JointTask& task_;
    Int laps_, unbalanced_;
    std::vector<Divisions> divisions_;
    std::vector<Region> all_;
    std::vector<Int> longest_;
};

}  // namespace

bool is_task(const JointTask& task) {
    return std::all_of(task.edges.begin(), task.edges.end(), is_edge) && task.kerf >= 0 &&
           std::all_of(task.sticks.begin(), task.sticks.end(), [](const JointStick& own) {
               return own.length > 0 && own.length < length_most && own.supply.value_or(0) >= 0 &&
                      own.supply.value_or(0) < 1'000'000'000;
           });
}

std::string wrong_parts(const JointTask& task, Int laps, Int unbalanced, Int bound,
                        const std::vector<JointPart>& parts) {
    if (bound <= 0) {
        return "";
    }
    if (!is_task(task) || laps < 0 || laps > laps_counted_most || unbalanced < 0) {
        return "numbers that are no roof's";
    }
    const Bound every(task, laps, unbalanced);
    for (const Region& own : every.all()) {
        if (own.classes == 0) {
            return "an edge that no lawful division covers";
        }
    }
    for (const JointPart& part : parts) {
        bool is_whole = part.edges.size() == task.edges.size();
        for (std::size_t e = 0; is_whole && e < task.edges.size(); ++e) {
            const Region own{part.edges[e].classes & every.all()[e].classes, part.edges[e].ranges};
            is_whole = are_ranges(task.edges[e], own);
        }
        if (!is_whole || !are_worths(part.worths, task.sticks.size())) {
            return "a part of another job";
        }
        if (!every.sticks_hold(part.worths)) {
            return "a stick that can hold more worth than is said";
        }
        if (every.of(part) < bound) {
            return "worths that do not reach the bound";
        }
    }
    return leaves_nothing_out(parts, every.all(), every.longest()) ? ""
                                                                   : "parts that leave plans out";
}

}  // namespace certificate
