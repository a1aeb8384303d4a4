#include "field/screens/page/actions.h"

#include <algorithm>
#include <numeric>

#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float far_mm = 13, other_mm = 10, primary_mm = 14, tall_mm = 15;
constexpr float primary_w_mm = 24, other_w_mm = 13;
constexpr float roomy_mm = 123;    // of the page's height that buttons may take
constexpr float upright_mm = 180;  // on an upright screen
constexpr float primary_share = 0.34F;
constexpr float column_mm = 75;  // below this width the primary action gets a separate row
constexpr float other_w_mm_most = 40;

bool is_roomy(const Ui& ui) { return ui.page().h >= ui.mm(ui.portrait() ? upright_mm : roomy_mm); }

/// The last action is under the thumb: rows run toward it.
float at_hand(const Ui& ui, Box box, float used, float w) {
    return ui.hand() == Hand::right ? box.x + used : box.right() - used - w;
}

}  // namespace

void see_first(Action& main, std::size_t below, const Text& words) {
    main.first = words;
    main.waits = below > 0 && main.look == Look::primary;
}

bool is_low(const Ui& ui) { return !ui.portrait() && !is_roomy(ui); }

ActionRows::ActionRows(const Ui& ui, const std::vector<Action>& actions, float w)
    : actions_(actions),
      w_(w),
      gap_(ui.mm(gap_mm)),
      far_(ui.mm(far_mm)),
      other_most_(ui.mm(other_w_mm_most)) {
    if (actions.empty()) {
        return;
    }
    for (const Action& action : actions) {
        least_.push_back(std::max({ui.label_width(action.label), ui.mm(other_w_mm),
                                   action.first.empty() ? 0 : ui.label_width(action.first)}));
    }
    has_main_ = actions.size() == 1 || actions.back().look != Look::plain;
    const bool roomy = is_roomy(ui);
    const float primary_h = ui.mm(roomy ? tall_mm : primary_mm);
    const float other_h = ui.mm(roomy ? tall_mm : other_mm);
    if (has_main_) {
        least_.back() = std::max(least_.back(), ui.mm(primary_w_mm));
    }
    const std::size_t last = actions.size() - (has_main_ ? 1 : 0);
    float all = std::accumulate(least_.begin(), least_.end(), 0.0F);
    for (std::size_t i = 0; i + 1 < actions.size(); ++i) {
        all += gap_after(i);
    }
    const bool column =
        has_main_ && ((last > 1 && w < ui.mm(column_mm)) || (ui.portrait() && roomy));
    if (last == 0 || (all <= w && !column)) {
        rows_.push_back({0, actions.size(), has_main_ ? primary_h : other_h});
        return;
    }
    float used = 0;
    for (std::size_t i = 0; i < last; ++i) {
        const float gap = i == 0 ? 0 : gap_after(i - 1);
        if (rows_.empty() || used + gap + least_[i] > w) {
            rows_.push_back({i, i, other_h});
            used = least_[i];
        } else {
            used += gap + least_[i];
        }
        rows_.back().to = i + 1;
        if (actions[i].look == Look::primary) {  // left or right: both are the answer
            rows_.back().h = primary_h;
        }
    }
    if (has_main_) {
        rows_.push_back({last, last + 1, primary_h});
    }
}

float ActionRows::gap_after(std::size_t action) const {
    return actions_[action].discards || actions_[action + 1].discards ? far_ : gap_;
}

float ActionRows::gap_below(std::size_t row) const {
    for (std::size_t i = rows_[row].from; i < rows_[row + 1].to; ++i) {
        if (actions_[i].discards) {
            return far_;
        }
    }
    return gap_;
}

float ActionRows::height() const {
    float h = 0;
    for (std::size_t i = 0; i < rows_.size(); ++i) {
        h += rows_[i].h + (i + 1 < rows_.size() ? gap_below(i) : 0);
    }
    return h;
}

/// Each gets its least width and an equal part of what is left; the primary gets at least a third
/// of the row.
std::vector<float> ActionRows::widths(const Row& row) const {
    std::vector<float> w(least_.begin() + static_cast<std::ptrdiff_t>(row.from),
                         least_.begin() + static_cast<std::ptrdiff_t>(row.to));
    const auto count = static_cast<float>(w.size());
    float left = w_ - std::accumulate(w.begin(), w.end(), 0.0F);
    for (std::size_t i = row.from; i + 1 < row.to; ++i) {
        left -= gap_after(i);
    }
    if (has_main_ && row.to == actions_.size() && w.size() > 1) {
        const float more = std::clamp(w_ * primary_share - w.back(), 0.0F, std::max(0.0F, left));
        w.back() += more;
        left -= more;
        for (std::size_t i = 0; i + 1 < w.size(); ++i) {
            const float more_still =
                std::min(left / (count - 1), std::max(0.0F, other_most_ - w[i]));
            w[i] += more_still;
            w.back() -= more_still;
        }
        w.back() += left;
        return w;
    }
    for (float& one : w) {  // without a main action none is wide
        one += has_main_ ? left / count : std::min(left / count, std::max(0.0F, other_most_ - one));
    }
    return w;
}

std::string ActionRows::draw(Ui& ui, Box box) const {
    std::string tapped;
    float y = box.y;
    for (std::size_t r = 0; r < rows_.size(); ++r) {
        const Row& row = rows_[r];
        const std::vector<float> wide = widths(row);
        float used = 0;
        Size largest = Size::bold;
        const std::size_t last = actions_.size() - (has_main_ ? 1 : 0);
        for (std::size_t i = row.from; i < std::min(row.to, last); ++i) {
            largest = std::min(
                largest, ui.label_size({actions_[i].label}, {0, 0, wide[i - row.from], row.h}));
        }
        for (std::size_t i = row.from; i < row.to; ++i) {
            const Action& action = actions_[i];
            const float w = wide[i - row.from];
            const std::string name = action.waits ? below_target : action.name;
            if (action.look != Look::off && (action.goes_back || action.name == "leave")) {
                ui.keyboard().goes_back(name);
            }
            if (ui.button(name, action.waits ? action.first : action.label,
                          {at_hand(ui, box, used, w), y, w, row.h}, action.look,
                          i < last ? largest : Size::title)) {
                tapped = name;
            }
            used += w + (i + 1 < row.to ? gap_after(i) : 0);
        }
        y += row.h + (r + 1 < rows_.size() ? gap_below(r) : 0);
    }
    return tapped;
}

}  // namespace hemline
