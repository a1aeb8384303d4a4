#include "tests/certificate/task.h"

#include <algorithm>
#include <set>

namespace certificate {

Task task_of(const nlohmann::json& certificate) {
    Task task;
    task.kerf = certificate.at("kerf").get<Int>();
    task.share = certificate.at("share").get<Int>();
    std::map<Int, Kind, std::greater<>> kinds;
    Int all = 0;
    for (const auto& piece : certificate.at("pieces")) {
        const Int size = piece.at("length").get<Int>() + task.kerf;
        const Int worth = piece.at("worth").get<Int>();
        Kind& kind = kinds[size];
        kind.worth = kind.count == 0 ? worth : std::min(kind.worth, worth);
        kind.size = size;
        kind.count += piece.at("count").get<Int>();
        all += piece.at("count").get<Int>();
    }
    for (const auto& [size, kind] : kinds) {
        task.kinds.push_back(kind);
    }
    std::map<std::pair<Int, bool>, Sticks> sticks;
    for (const auto& own : certificate.at("stock")) {
        const Int room = own.at("length").get<Int>() + task.kerf;
        const bool on_hand = own.at("on_hand").get<bool>();
        Sticks& alike = sticks[{room, on_hand}];
        alike.room = room;
        alike.on_hand = on_hand;
        alike.unlimited = alike.unlimited || own.at("supply").is_null();
        const Int more = own.at("supply").is_null() ? all : own.at("supply").get<Int>();
        alike.supply = std::min(all, alike.supply + std::min(all, more));
        alike.holds_at_most = std::max(alike.holds_at_most, own.at("holds_at_most").get<Int>());
    }
    for (const auto& [key, alike] : sticks) {
        task.sticks.push_back(alike);
    }
    return task;
}

Int most_worth(const Task& task, Int room) {
    std::map<Int, Int> held{{0, 0}};  // by room used, each worth more than all that use less
    for (const Kind& kind : task.kinds) {
        for (Int n = 0; kind.worth > 0 && n < std::min(kind.count, room / kind.size); ++n) {
            std::map<Int, Int> with = held;
            for (const auto& [used, worth] : held) {
                if (used + kind.size <= room) {
                    Int& own = with[used + kind.size];
                    own = std::max(own, worth + kind.worth);
                }
            }
            Int most = -1;
            for (auto at = with.begin(); at != with.end();) {
                if (at->second <= most) {
                    at = with.erase(at);
                } else {
                    most = (at++)->second;
                }
            }
            if (with == held) {
                break;
            }
            held = std::move(with);
        }
    }
    return held.rbegin()->second;
}

namespace {

/// Fills stick after stick, each with the longest piece left and whatever else has no room for
/// more; turns back where the pieces left are worth, or measure, more than the sticks left can
/// hold.
class Search {
  public:
    Search(const Task& task, Int new_sticks, Int steps)
        : task_(task), new_left_(new_sticks), steps_(steps) {
        for (const Kind& kind : task.kinds) {
            left_.push_back(kind.count);
        }
        for (const Sticks& sticks : task.sticks) {
            supply_.push_back(sticks.supply);
            longest_ = std::max(longest_, sticks.on_hand ? 0 : sticks.room);
        }
    }
    Searched run() {
        const bool found = cut_rest();
        return steps_ <= 0 ? Searched::not_finished : found ? Searched::plan : Searched::no_plan;
    }

  private:
    [[nodiscard]] bool is_hopeless() const {
        __extension__ using Wide = __int128;
        Wide worth = 0, metal = 0;
        for (std::size_t i = 0; i < left_.size(); ++i) {
            worth += static_cast<Wide>(left_[i]) * task_.kinds[i].worth;
            metal += static_cast<Wide>(left_[i]) * task_.kinds[i].size;
        }
        worth -= static_cast<Wide>(new_left_) * task_.share;
        metal -= static_cast<Wide>(new_left_) * longest_;
        for (std::size_t k = 0; k < supply_.size(); ++k) {
            const Sticks& sticks = task_.sticks[k];
            const Int over = sticks.holds_at_most - (sticks.on_hand ? 0 : task_.share);
            worth -= static_cast<Wide>(supply_[k]) * std::max<Int>(over, 0);
            metal -= sticks.on_hand ? static_cast<Wide>(supply_[k]) * sticks.room : 0;
        }
        return worth > 0 || metal > 0;
    }

    bool cut_rest() {
        std::size_t longest = 0;
        while (longest < left_.size() && left_[longest] == 0) {
            ++longest;
        }
        if (longest == left_.size()) {
            return true;
        }
        std::vector<Int> rest = left_;
        rest.insert(rest.end(), supply_.begin(), supply_.end());
        rest.push_back(new_left_);
        if (is_hopeless() || failed_.count(rest) > 0) {
            return false;
        }
        for (std::size_t k = 0; k < supply_.size(); ++k) {
            const Sticks& sticks = task_.sticks[k];
            if (supply_[k] == 0 || sticks.room < task_.kinds[longest].size ||
                (!sticks.on_hand && new_left_ == 0)) {
                continue;
            }
            --supply_[k];
            --left_[longest];
            new_left_ -= sticks.on_hand ? 0 : 1;
            const bool found = fill(longest, sticks.room - task_.kinds[longest].size);
            new_left_ += sticks.on_hand ? 0 : 1;
            ++left_[longest];
            ++supply_[k];
            if (found) {
                return true;
            }
        }
        failed_.insert(std::move(rest));
        return false;
    }

    bool fill(std::size_t from, Int room) {
        if (--steps_ <= 0) {
            return false;
        }
        bool is_full = true;
        for (std::size_t i = 0; i < left_.size(); ++i) {
            const bool fits = left_[i] > 0 && task_.kinds[i].size <= room;
            is_full = is_full && !fits;
            if (fits && i >= from) {
                --left_[i];
                const bool found = fill(i, room - task_.kinds[i].size);
                ++left_[i];
                if (found) {
                    return true;
                }
            }
        }
        return is_full && cut_rest();
    }

    const Task& task_;
    std::vector<Int> left_, supply_;
    Int new_left_, longest_ = 0, steps_;
    std::set<std::vector<Int>> failed_;
};

}  // namespace

Searched search_again(const Task& task, Int new_sticks, Int steps_most) {
    return Search(task, new_sticks, steps_most).run();
}

}  // namespace certificate
