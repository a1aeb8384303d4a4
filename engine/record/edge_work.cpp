// What length the readings of an edge give.
#include <set>
#include <utility>

#include "engine/record/job.h"

namespace hemline {

namespace {

/// The readings of an edge that are not struck.
class Counting {
  public:
    explicit Counting(Tape tape) : tape_(tape) {}

    void add(Length reading) { lengths_.emplace_back(reading); }
    /// Earlier readings that disagree with this one by more than the tape allows for the longer of
    /// the two.
    void settle(Length reading) {
        for (; sorted_ < lengths_.size(); ++sorted_) {
            rising_.emplace(*lengths_[sorted_], sorted_);
            least_.emplace(least_of(*lengths_[sorted_]), sorted_);
        }
        const Length least = least_of(reading);
        while (!rising_.empty() && rising_.begin()->first < least) {
            take_out(rising_.begin()->second);
        }
        while (!least_.empty() && least_.rbegin()->first > reading) {
            take_out(least_.rbegin()->second);
        }
    }
    [[nodiscard]] std::vector<Length> lengths() const {
        std::vector<Length> counting;
        for (const auto& length : lengths_) {
            if (length) {
                counting.push_back(*length);
            }
        }
        return counting;
    }

  private:
    [[nodiscard]] Length least_of(Length reading) const {
        return reading - allowed_difference(reading, tape_);
    }
    void take_out(std::size_t place) {
        const Length reading = *lengths_[place];
        rising_.erase({reading, place});
        least_.erase({least_of(reading), place});
        lengths_[place].reset();
    }

    Tape tape_;
    std::vector<std::optional<Length>> lengths_;
    std::size_t sorted_ = 0;  ///< so many readings are in the sets, or taken out
    std::set<std::pair<Length, std::size_t>> rising_;
    std::set<std::pair<Length, std::size_t>> least_;  ///< by the shortest that does not disagree
};

}  // namespace

Verdict EdgeWork::verdict(const Practice& practice) const {
    Counting counting(practice.tape);
    for (const RecordedReading& reading : readings) {
        if (reading.struck || reading.of != ReadingOf::edge) {
            continue;
        }
        if (reading.settles) {
            counting.settle(reading.length);
        }
        counting.add(reading.length);
    }
    return judge_readings(counting.lengths(), practice.tape, practice.cut_grid);
}

std::optional<Length> EdgeWork::length(const Practice& practice) const {
    return verdict(practice).length;
}

std::optional<Length> EdgeWork::remainder() const {
    for (auto reading = readings.rbegin(); reading != readings.rend(); ++reading) {
        if (!reading->struck && reading->of == ReadingOf::remainder) {
            return reading->length;
        }
    }
    return {};
}

}  // namespace hemline
