#include "field/touch/focus.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace hemline {

namespace {

/// Where it stands among what is no list.
Box place_of(const Focusable& one) { return one.list == nullptr ? one.box : one.list_view; }

/// Puts what lies in a row side by side: `order` is sorted by the tops of the boxes.
template <class BoxOf>
void sort_rows(std::vector<std::size_t>& order, BoxOf box_of) {
    std::stable_sort(order.begin(), order.end(),
                     [&](std::size_t a, std::size_t b) { return box_of(a).y < box_of(b).y; });
    for (auto row = order.begin(); row != order.end();) {
        const float middle = box_of(*row).mid_y();
        auto end = std::find_if(row, order.end(),
                                [&](std::size_t one) { return box_of(one).y >= middle; });
        end = end == row ? row + 1 : end;
        std::stable_sort(row, end,
                         [&](std::size_t a, std::size_t b) { return box_of(a).x < box_of(b).x; });
        row = end;
    }
}

/// Distance that way, with what lies aside counting three times; empty: it is not that way.
std::optional<float> way_to(Box from, Box to, Key way) {
    const bool upright = way == Key::up || way == Key::down;
    const float ahead = way == Key::down   ? to.y - from.bottom()
                        : way == Key::up   ? from.y - to.bottom()
                        : way == Key::left ? from.x - to.right()
                                           : to.x - from.right();
    const float aside = upright ? std::max(to.x - from.right(), from.x - to.right())
                                : std::max(to.y - from.bottom(), from.y - to.bottom());
    if (ahead < -1) {
        return std::nullopt;
    }
    const float off = upright ? to.mid_x() - from.mid_x() : to.mid_y() - from.mid_y();
    return ahead + 3 * std::max(0.0F, aside) + 0.1F * std::abs(off);
}

}  // namespace

std::vector<std::size_t> reading_order(const std::vector<Focusable>& all) {
    std::vector<std::size_t> places;  // a list by its first target
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool is_known = std::any_of(places.begin(), places.end(), [&](std::size_t place) {
            return all[i].list != nullptr && all[place].list == all[i].list;
        });
        if (!is_known) {
            places.push_back(i);
        }
    }
    sort_rows(places, [&](std::size_t i) { return place_of(all[i]); });
    std::vector<std::size_t> order;
    for (const std::size_t place : places) {
        std::vector<std::size_t> within;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (i == place || (all[i].list != nullptr && all[i].list == all[place].list)) {
                within.push_back(i);
            }
        }
        sort_rows(within, [&](std::size_t i) { return all[i].box; });
        order.insert(order.end(), within.begin(), within.end());
    }
    return order;
}

std::optional<std::size_t> after(const std::vector<Focusable>& all, std::optional<std::size_t> from,
                                 Key tab) {
    const std::vector<std::size_t> order = reading_order(all);
    if (order.empty()) {
        return std::nullopt;
    }
    const auto here = from ? std::find(order.begin(), order.end(), *from) : order.end();
    if (tab == Key::tab) {
        return here == order.end() || here + 1 == order.end() ? order.front() : *(here + 1);
    }
    return here == order.end() || here == order.begin() ? order.back() : *(here - 1);
}

std::optional<std::size_t> beside(const std::vector<Focusable>& all, std::size_t from, Key way) {
    std::optional<std::size_t> best;
    float least = 0;
    bool best_in_list = false;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const bool in_list = all[from].list != nullptr && all[i].list == all[from].list;
        if (i == from || (!in_list && !all[i].in_sight)) {
            continue;
        }
        const Box start = in_list ? all[from].box : all[from].shown;
        const std::optional<float> far = way_to(start, in_list ? all[i].box : all[i].shown, way);
        if (far &&
            (!best || (in_list && !best_in_list) || (in_list == best_in_list && *far < least))) {
            best = i;
            least = *far;
            best_in_list = in_list;
        }
    }
    return best;
}

}  // namespace hemline
