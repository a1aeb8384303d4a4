#include "engine/panels/meeting_seams.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>

#include "engine/panels/panel_rules.h"

namespace hemline {

namespace {

Length modulo(Length length, Length module) { return length - round_down_to(length, module); }

/// Whether the seams of both lie on the same lines of the ridge.
bool meet(const SeamTask& a, const SeamLayout& one, const SeamLayout& other, Length sum) {
    const Length apart = modulo(sum - one.seams.front() - other.seams.front(), a.frame.module);
    return apart < same_place || a.frame.module - apart < same_place;
}

/// On the grid of shifts where it is that but for what rounding has added.
Length snapped(Length shift) {
    const Length on_grid = nearest_on(shift, panel_rule::shift_grid);
    return absolute(shift - on_grid) < same_place ? on_grid : shift;
}

/// A way to lay some planes, and what speaks against it.
struct Together {
    std::map<std::size_t, SeamLayout> layouts;
    std::size_t staying = 0;
    Length largest, sum;

    void add(std::size_t plane, SeamLayout layout) {
        staying += layout.staying.size();
        largest = std::max(largest, absolute(layout.shift));
        sum += absolute(layout.shift);
        layouts.emplace(plane, std::move(layout));
    }
    [[nodiscard]] bool is_better_than(const std::optional<Together>& other) const {
        return !other || std::tie(staying, largest, sum) <
                             std::tie(other->staying, other->largest, other->sum);
    }
};

class Meeting {
  public:
    Meeting(std::span<const SeamTask> planes, std::span<const SharedRidge> ridges)
        : planes_(planes), ridges_(ridges), group_(planes.size()) {
        std::iota(group_.begin(), group_.end(), std::size_t{0});
        for (const SeamTask& plane : planes) {
            lay_alone(plane);
        }
        for (std::size_t ridge = 0; ridge < ridges.size(); ++ridge) {
            try_to_join(ridge);
        }
        for (const SharedRidge& ridge : ridges) {
            result_.met.push_back(can_meet(ridge) &&
                                  meet(planes_[ridge.a], result_.layouts[ridge.a],
                                       result_.layouts[ridge.b], ridge.sum));
        }
    }
    [[nodiscard]] const MeetingSeams& result() const { return result_; }

  private:
    [[nodiscard]] bool has_seams(std::size_t plane) const {
        return !result_.layouts[plane].seams.empty();
    }
    [[nodiscard]] bool can_meet(const SharedRidge& ridge) const {
        return has_seams(ridge.a) && has_seams(ridge.b) &&
               planes_[ridge.a].frame.module == planes_[ridge.b].frame.module;
    }

    void lay_alone(const SeamTask& plane) {
        std::optional<SeamLayout> chosen;
        if (plane.chosen) {
            chosen = lay_seams(plane.frame, plane.keep_off, *plane.chosen);
        }
        result_.fits.push_back(!plane.chosen || chosen);
        result_.layouts.push_back(chosen ? *chosen : lay_seams(plane.frame, plane.keep_off));
    }

    /// All shifts that the plane may have; as chosen, or every one on the grid.
    [[nodiscard]] std::vector<Length> shifts_of(std::size_t plane) const {
        if (is_chosen(plane)) {
            return {planes_[plane].chosen->shift};
        }
        const SeamFrame& frame = planes_[plane].frame;
        return shifts_in(shift_room(frame, balanced_seams(frame)));
    }
    [[nodiscard]] bool is_chosen(std::size_t plane) const {
        return planes_[plane].chosen && result_.fits[plane];
    }

    /// With a seam on that line, shifted least.
    [[nodiscard]] std::optional<SeamLayout> laid_through(std::size_t plane, Length line) const {
        const auto& [frame, keep_off, chosen] = planes_[plane];
        if (is_chosen(plane)) {
            return result_.layouts[plane];
        }
        const std::vector<Length> balanced = balanced_seams(frame);
        const ShiftRoom room = shift_room(frame, balanced);
        const Length by = modulo(line - balanced.front(), frame.module);
        const Length right = snapped(by), left = snapped(by - frame.module);
        const bool to_the_left = absolute(left) < right ? room.has(left) : !room.has(right);
        return lay_seams(frame, keep_off, {to_the_left ? left : right, false});
    }

    /// The first plane shifted so, and what that asks of the others; none where one cannot.
    [[nodiscard]] std::optional<Together> from_first(const std::vector<std::size_t>& group,
                                                     const std::vector<std::size_t>& ridges,
                                                     Length shift) const {
        const std::size_t first = group.front();
        const SeamTask& task = planes_[first];
        const ChosenSeams chosen{shift, is_chosen(first) && task.chosen->one_more};
        Together together;
        together.add(first, *lay_seams(task.frame, task.keep_off, chosen));
        while (together.layouts.size() < group.size()) {
            for (const std::size_t i : ridges) {
                for (const auto& [from, to] :
                     {std::pair(ridges_[i].a, ridges_[i].b), {ridges_[i].b, ridges_[i].a}}) {
                    const auto known = together.layouts.find(from);
                    if (known == together.layouts.end() || together.layouts.count(to) > 0) {
                        continue;
                    }
                    auto layout = laid_through(to, ridges_[i].sum - known->second.seams.front());
                    if (!layout) {
                        return {};
                    }
                    together.add(to, std::move(*layout));
                }
            }
        }
        const bool all_meet = std::all_of(ridges.begin(), ridges.end(), [&](std::size_t i) {
            return meet(planes_[ridges_[i].a], together.layouts.at(ridges_[i].a),
                        together.layouts.at(ridges_[i].b), ridges_[i].sum);
        });
        return all_meet ? std::optional(std::move(together)) : std::nullopt;
    }

    void try_to_join(std::size_t ridge) {
        if (!can_meet(ridges_[ridge])) {
            return;
        }
        const std::size_t a = group_[ridges_[ridge].a], b = group_[ridges_[ridge].b];
        std::vector<std::size_t> group, ridges = joined_;
        std::size_t staying = 0;
        for (std::size_t plane = 0; plane < planes_.size(); ++plane) {
            if (group_[plane] == a || group_[plane] == b) {
                group.push_back(plane);
                staying += result_.layouts[plane].staying.size();
            }
        }
        ridges.push_back(ridge);
        std::erase_if(ridges, [&](std::size_t i) {
            return group_[ridges_[i].a] != a && group_[ridges_[i].a] != b;
        });
        const auto chosen = std::find_if(group.begin(), group.end(),
                                         [&](std::size_t plane) { return is_chosen(plane); });
        if (chosen != group.end()) {
            std::iter_swap(group.begin(), chosen);
        }
        std::optional<Together> best;
        for (const Length shift : shifts_of(group.front())) {
            auto together = from_first(group, ridges, shift);
            if (together && together->is_better_than(best)) {
                best = std::move(together);
            }
        }
        if (!best || best->staying > staying) {
            return;
        }
        joined_.push_back(ridge);
        for (auto& [plane, layout] : best->layouts) {
            layout.with_one_more = result_.layouts[plane].with_one_more;
            result_.layouts[plane] = std::move(layout);
            group_[plane] = a;
        }
    }

    std::span<const SeamTask> planes_;
    std::span<const SharedRidge> ridges_;
    std::vector<std::size_t> group_, joined_;
    MeetingSeams result_;
};

}  // namespace

MeetingSeams meeting_seams(std::span<const SeamTask> planes, std::span<const SharedRidge> ridges) {
    return Meeting(planes, ridges).result();
}

}  // namespace hemline
