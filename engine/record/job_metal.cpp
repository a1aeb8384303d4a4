#include "engine/record/job_metal.h"

#include <algorithm>
#include <functional>
#include <set>

namespace hemline {

namespace {

/// One of these sticks no longer lies there. None where there was none.
std::optional<Offcut> take_one(Job& job, EventId id) {
    const auto found = std::find_if(job.offcuts.begin(), job.offcuts.end(),
                                    [&](const Offcut& offcut) { return offcut.left_by == id; });
    if (found == job.offcuts.end()) {
        return {};
    }
    Offcut one = *found;
    one.count = 1;
    if (--found->count <= 0) {
        job.offcuts.erase(found);
    }
    return one;
}

/// Opens the metal: its length, or none where it is not there.
std::optional<Length> open_metal(Job& job, const MetalTaken& metal) {
    if (!metal.offcut) {
        ++job.sticks_opened;
        return metal.stick;
    }
    const std::optional<Offcut> one = take_one(job, *metal.offcut);
    return one ? std::optional(one->length) : std::nullopt;
}

}  // namespace

void take_metal(Job& job, const Event& event, const std::string& edge, TrimRole role,
                const MetalTaken& metal, Length length) {
    const std::optional<Length> from = open_metal(job, metal);
    const Length left = from.value_or(Length()) - length - job.practice.kerf;
    if (left > Length()) {
        job.offcuts.push_back({event.id, edge, role, left});
    }
}

void count_metal(Job& job, const Event& event, const MetalCounted& counted) {
    const std::set<EventId> named(event.supersedes.begin(), event.supersedes.end());
    const auto corrected = [&](const Offcut& offcut) { return named.count(offcut.left_by) > 0; };
    const auto from = std::remove_if(job.offcuts.begin(), job.offcuts.end(), corrected);
    if (from == job.offcuts.end() && !event.supersedes.empty()) {
        return;
    }
    job.offcuts.erase(from, job.offcuts.end());
    if (counted.count > 0 && counted.length > Length()) {
        job.offcuts.push_back(
            {event.id, counted.edge, counted.role, counted.length, counted.count});
    }
}

void measure_stick(Job& job, const Event& event, const StickMeasured& measured) {
    const std::optional<Length> from = open_metal(job, measured.metal);
    if (from && measured.length > Length()) {
        job.offcuts.push_back({event.id, measured.edge, measured.role, measured.length});
    }
}

void spoil_stick(Job& job, const StickSpoiled& spoiled) { open_metal(job, spoiled.metal); }

void choose_stock(Job& job, const StockChosen& chosen) {
    std::vector<Length> lengths = chosen.lengths;
    std::sort(lengths.begin(), lengths.end(), std::greater<>());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    if (lengths.empty() || lengths.back() <= Length()) {
        return;
    }
    if (const Result<Practice> changed = with_stock(job.practice, lengths.front())) {
        job.practice = *changed;
        job.stock_shorter.assign(lengths.begin() + 1, lengths.end());
    }
}

}  // namespace hemline
