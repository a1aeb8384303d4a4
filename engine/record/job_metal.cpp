#include "engine/record/job_metal.h"
#include "engine/words/result.h"

#include <algorithm>
#include <functional>
#include <utility>

namespace hemline {

namespace {

/// Takes one of these sticks away and returns its length; none where there is none.
std::optional<Length> take_one(Metal metal, EventId id) {
    const std::optional<std::size_t> place = metal.offcuts.first(id);
    if (!place) {
        return {};
    }
    Offcut& found = metal.job.offcuts[*place];
    if (--found.count <= 0) {
        metal.offcuts.take_first(id);
    }
    return found.length;
}

/// Takes the metal for use and returns its length; none where it is not there.
std::optional<Length> open_metal(Metal metal, const MetalTaken& taken) {
    if (!taken.offcut) {
        ++metal.job.sticks_opened;
        return taken.stick;
    }
    return take_one(metal, *taken.offcut);
}

void lay_down(Metal metal, Offcut offcut) {
    metal.offcuts.add(offcut.left_by, metal.job.offcuts.size());
    metal.job.offcuts.push_back(std::move(offcut));
}

}  // namespace

void take_metal(Metal metal, const Event& event, const std::string& edge, TrimRole role,
                const MetalTaken& taken, Length length) {
    const std::optional<Length> from = open_metal(metal, taken);
    const Length left = from.value_or(Length()) - length - metal.job.practice.kerf;
    if (left > Length()) {
        lay_down(metal, {event.id, edge, role, left});
    }
}

void count_metal(Metal metal, const Event& event, const MetalCounted& counted) {
    std::size_t corrected = 0;
    for (const EventId& id : event.supersedes) {
        corrected += metal.offcuts.take_all(id);
    }
    if (corrected == 0 && !event.supersedes.empty()) {
        return;
    }
    if (counted.count > 0 && counted.length > Length()) {
        lay_down(metal, {event.id, counted.edge, counted.role, counted.length, counted.count});
    }
}

void measure_stick(Metal metal, const Event& event, const StickMeasured& measured) {
    const std::optional<Length> from = open_metal(metal, measured.metal);
    if (from && measured.length > Length()) {
        lay_down(metal, {event.id, measured.edge, measured.role, measured.length});
    }
}

void spoil_stick(Metal metal, const StickSpoiled& spoiled) { open_metal(metal, spoiled.metal); }

void choose_stock(Job& job, const StockChosen& chosen) {
    std::vector<Length> lengths = chosen.lengths;
    std::sort(lengths.begin(), lengths.end(), std::greater<>());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    if (lengths.empty() || lengths.back() <= Length()) {
        return;
    }
    if (lengths.size() > stock_lengths_most) {
        job.left_out.add("stock", too_many_stock_lengths(lengths.size()));
        lengths.resize(stock_lengths_most);
    } else {
        job.left_out.mend("stock");
    }
    if (const Result<Practice> changed = with_stock(job.practice, lengths.front())) {
        job.practice = *changed;
        job.stock_shorter.assign(lengths.begin() + 1, lengths.end());
    }
}

}  // namespace hemline
