#include "engine/record/clock_doubt.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <optional>
#include <set>

namespace hemline {
namespace {

/// What a tablet's clock said, and how often it had been set back before.
struct ClockRead {
    std::uint64_t device = 0;
    std::int64_t ms = 0;
    std::size_t times_set_back = 0;
};

/// The same, by which of the tablet's events.
struct ClockSaid {
    std::uint32_t sequence = 0;
    ClockRead read;
};

struct Clock {
    std::string by;
    std::size_t came = 0;         ///< after so many other tablets
    std::vector<ClockSaid> said;  ///< by sequence
    std::size_t times_set_back = 0, times_set_on = 0;
};

/// What a tablet has seen of another's clock: by how much this tablet's clock lay behind it then,
/// and how often this tablet's clock had been set forward before.
struct Sight {
    std::int64_t other_ms = 0, behind_ms = 0;
    std::size_t times_set_on = 0;
};

/// Goes through the events in order and keeps what each tablet last saw of every other tablet's
/// clock.
class Clocks {
  public:
    void take(const Event& event);
    [[nodiscard]] std::vector<ClockDoubt> doubts() const;

  private:
    ClockRead read(const Event& event, std::int64_t ms);
    [[nodiscard]] const ClockRead* said(EventId id) const;
    void see(const Event& event, const ClockRead& other);
    [[nodiscard]] std::map<std::uint64_t, TabletHeld> all_held() const;

    std::map<std::uint64_t, Clock> clocks_;
    std::map<std::uint64_t, std::map<std::uint64_t, Sight>> sights_;  ///< of whom, by whom
    std::optional<HybridTime> last_;
    ClockRead raised_by_;  ///< the clock that the logical time of these events comes from
};

ClockRead Clocks::read(const Event& event, std::int64_t ms) {
    Clock& clock = clocks_[event.id.device];
    if (!clock.said.empty() && ms < clock.said.back().read.ms - clock_doubt_ms) {
        ++clock.times_set_back;  // what the clock said before is no longer evidence
        sights_.erase(event.id.device);
    }
    const ClockRead read{event.id.device, ms, clock.times_set_back};
    if (clock.said.empty() || clock.said.back().sequence < event.id.sequence) {
        clock.said.push_back({event.id.sequence, read});
    }
    return read;
}

/// Null: the event is not there, it does not say, or its tablet did not write its events in the
/// order of their numbers.
const ClockRead* Clocks::said(EventId id) const {
    const auto clock = clocks_.find(id.device);
    if (clock == clocks_.end()) {
        return nullptr;
    }
    const std::vector<ClockSaid>& all = clock->second.said;
    const auto found = std::lower_bound(
        all.begin(), all.end(), id.sequence,
        [](const ClockSaid& one, std::uint32_t sequence) { return one.sequence < sequence; });
    return found == all.end() || found->sequence != id.sequence ? nullptr : &found->read;
}

void Clocks::see(const Event& event, const ClockRead& other) {
    const std::uint64_t device = event.id.device;
    if (other.device == device || other.times_set_back < clocks_[other.device].times_set_back) {
        return;
    }
    Clock& own = clocks_[device];
    Sight& sight = sights_[other.device][device];
    if (other.ms <= sight.other_ms && sight.times_set_on == own.times_set_on) {
        return;
    }
    const std::int64_t behind_ms = other.ms - event.moment->clock.ms;
    if (sight.times_set_on == own.times_set_on && sight.behind_ms > clock_doubt_ms &&
        behind_ms <= clock_doubt_ms) {
        ++own.times_set_on;  // how far it lagged before is no longer evidence
    }
    sight = {other.ms, behind_ms, own.times_set_on};
}

void Clocks::take(const Event& event) {
    const std::size_t before = clocks_.size();
    const auto [clock, is_new] = clocks_.try_emplace(event.id.device);
    clock->second.by = event.by;
    if (is_new) {
        clock->second.came = before;
    }
    const bool is_first_of_time = !last_ || last_->wall_ms < event.when.wall_ms;
    last_ = event.when;
    // The first event with a new time took it from its tablet's clock, in version 1 too.
    if (event.moment || is_first_of_time) {
        const ClockRead own = read(event, wall_time(event).ms);
        if (is_first_of_time && own.ms == event.when.wall_ms) {
            raised_by_ = own;
        }
    }
    if (!event.moment) {
        return;
    }
    if (event.when.wall_ms > event.moment->clock.ms && raised_by_.ms == event.when.wall_ms) {
        see(event, raised_by_);
    }
    if (event.moment->after) {
        if (const ClockRead* const before = said(*event.moment->after)) {
            see(event, *before);
        }
    }
}

std::map<std::uint64_t, TabletHeld> Clocks::all_held() const {
    std::map<std::string, std::map<std::size_t, std::uint64_t>> of_each;
    for (const auto& [device, clock] : clocks_) {
        of_each[clock.by].emplace(clock.came, device);
    }
    std::map<std::uint64_t, TabletHeld> held;
    for (const auto& [by, tablets] : of_each) {
        std::size_t number = 0;
        for (const auto& [came, device] : tablets) {
            held[device] = {device, by, tablets.size() > 1 ? ++number : 0};
        }
    }
    return held;
}

std::vector<ClockDoubt> Clocks::doubts() const {
    const std::map<std::uint64_t, TabletHeld> held = all_held();
    std::map<std::uint64_t, std::set<std::uint64_t>> against;
    const auto each_contradiction = [&](const auto& take) {
        for (const auto& [ahead, by_whom] : sights_) {
            for (const auto& [behind, sight] : by_whom) {
                if (sight.behind_ms > clock_doubt_ms &&
                    sight.times_set_on == clocks_.at(behind).times_set_on) {
                    take(ahead, behind, sight.behind_ms);
                }
            }
        }
    };
    each_contradiction([&](std::uint64_t ahead, std::uint64_t behind, std::int64_t) {
        against[ahead].insert(behind);
        against[behind].insert(ahead);
    });
    std::map<std::uint64_t, ClockDoubt> wrong;
    std::vector<ClockDoubt> apart;
    each_contradiction([&](std::uint64_t ahead, std::uint64_t behind, std::int64_t off_ms) {
        const std::size_t of_ahead = against[ahead].size(), of_behind = against[behind].size();
        if (of_ahead == of_behind) {
            apart.push_back({held.at(ahead), ClockIs::apart, off_ms, held.at(behind)});
            return;
        }
        const bool is_ahead = of_ahead > of_behind;
        ClockDoubt& doubt = wrong[is_ahead ? ahead : behind];
        if (off_ms > doubt.off_ms) {
            doubt = {held.at(is_ahead ? ahead : behind),
                     is_ahead ? ClockIs::ahead : ClockIs::behind,
                     off_ms,
                     {}};
        }
    });
    std::vector<ClockDoubt> doubts;
    for (const auto& [device, doubt] : wrong) {
        doubts.push_back(doubt);
    }
    for (const ClockDoubt& doubt : apart) {
        // One of the two is known to be wrong: that explains the difference.
        if (wrong.count(doubt.tablet.device) == 0 && wrong.count(doubt.other.device) == 0) {
            doubts.push_back(doubt);
        }
    }
    return doubts;
}

Text span_words(std::int64_t ms) {
    constexpr std::int64_t hour_ms = 3'600'000, day_ms = 24 * hour_ms, days_in_year = 365;
    const std::int64_t days = ms / day_ms;
    if (days >= 2 * days_in_year) {
        return say_count("{1} year", "{1} years", days / days_in_year);
    }
    return days >= 2 ? say_count("{1} day", "{1} days", days)
                     : say_count("{1} hour", "{1} hours", ms / hour_ms);
}

Text name_of(const TabletHeld& tablet) {
    if (tablet.by.empty()) {
        return say("a tablet that nobody is named on");
    }
    static constexpr const char* words[] = {
        phrase("{1}'s tablet"), phrase("{1}'s first tablet on this job"),
        phrase("{1}'s second tablet on this job"), phrase("{1}'s third tablet on this job")};
    return tablet.of_his < std::size(words)
               ? say(words[tablet.of_his], tablet.by)
               : say("one of {1}'s later tablets on this job", tablet.by);
}

}  // namespace

std::vector<ClockDoubt> clock_doubts(std::span<const Event> events) {
    Clocks clocks;
    for (const Event& event : events) {
        clocks.take(event);
    }
    return clocks.doubts();
}

bool is_about(const ClockDoubt& doubt, std::uint64_t device) {
    return doubt.tablet.device == device ||
           (doubt.is == ClockIs::apart && doubt.other.device == device);
}

Text words_on(const ClockDoubt& doubt, std::uint64_t here) {
    const Text off = span_words(doubt.off_ms), tablet = name_of(doubt.tablet);
    const bool is_here = doubt.tablet.device == here;
    switch (doubt.is) {
        case ClockIs::ahead:
            return is_here ? say("This tablet's clock is {1} or more ahead of the others. Set the "
                                 "tablet's clock: days and papers go by it.",
                                 off)
                           : say("The clock of {1} is {2} or more ahead of the others. Set that "
                                 "tablet's clock: days and papers go by it.",
                                 tablet, off);
        case ClockIs::behind:
            return is_here ? say("This tablet's clock is {1} or more behind the others. Set the "
                                 "tablet's clock: days and papers go by it.",
                                 off)
                           : say("The clock of {1} is {2} or more behind the others. Set that "
                                 "tablet's clock: days and papers go by it.",
                                 tablet, off);
        case ClockIs::apart:
            break;
    }
    const Text other = name_of(is_here ? doubt.other : doubt.tablet);
    if (is_about(doubt, here)) {
        return say(
            "This tablet's clock and that of {1} are {2} or more apart. Look at both, and "
            "set the tablet's clock that is wrong: days and papers go by it.",
            other, off);
    }
    return say(
        "The clocks of {1} and {2} are {3} or more apart. Look at both, and set the "
        "tablet's clock that is wrong: days and papers go by it.",
        tablet, name_of(doubt.other), off);
}

}  // namespace hemline
