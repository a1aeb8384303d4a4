#include "field/screens/section/draw_profile.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>

#include "field/screens/section/profile_line.h"
#include "field/screens/section/profile_places.h"
#include "field/screens/section/section_words.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float line_mm = 0.8F, chosen_mm = 1.8F, tick_mm = 1.6F;
constexpr float touch_w_mm = 22, touch_h_mm = 11, button_h_mm = 12;
constexpr float beside_part_most = 0.35F;  // of the width, on either side of the drawing
constexpr float hem_mm_clear = 14;         // a hem drawn as wide as this needs no circle
constexpr float circle_mm = 9;             // its radius
constexpr float circle_room_mm = 70;       // of a drawing that has room for one

std::vector<Text> names_of(const ProfileAsked& asked) {
    std::vector<Text> names = asked.names;
    for (std::size_t i = names.size(); i < asked.section.legs.size(); ++i) {
        names.push_back(spoken(asked.section.legs[i].name));
    }
    return names;
}

Text width_of(const ProfileAsked& asked, std::size_t i) {
    return Text(print_length(asked.section.legs[i].width, asked.marks));
}

/// The name on at most two lines, above the width.
Box words_size(const Ui& ui, const Text& name) {
    const float w = std::max(ui.mm(touch_w_mm), ui.label_width(name));
    const float h = ui.paragraph_height(w, name, Size::small) + ui.line_height(Size::small);
    return {0, 0, w, std::max(ui.mm(touch_h_mm), h)};
}

Box button_size(const Ui& ui, const Text& words) {
    return {0, 0, std::max(ui.mm(touch_w_mm), ui.label_width(words)), ui.mm(button_h_mm)};
}

/// From what words are of to the words, where they are not beside it.
void draw_leader(const Ui& ui, ImVec2 middle, Box place, ProfileTaken& taken) {
    const ImVec2 end = leader_end(middle, place);
    taken.words.push_back(place);
    taken.leaders.emplace_back(middle, end);
    if (std::hypot(end.x - middle.x, end.y - middle.y) > ui.mm(gap_mm)) {
        ui.ink()->AddLine(middle, end, ui.colours().soft, ui.mm(0.3F));
    }
}

/// Shows what is known of the shape, and draws into it.
class Profile {
  public:
    Profile(Ui& ui, const ProfileAsked& asked, Box page)
        : ui_(ui), asked_(asked), page_(page), names_(names_of(asked)) {
        float beside = 0;
        for (const Text& name : names_) {
            beside = std::max(beside, words_size(ui, name).w + ui.mm(3));
        }
        line_ = profile_line(asked, inset(page, std::min(beside, page.w * beside_part_most),
                                          std::min(ui.mm(touch_h_mm), page.h * 0.08F)));
        taken_.add_line(line_.stroke);
    }

    Touched draw() {
        draw_stroke();
        const std::vector<std::size_t> order = widest_first();
        for (const std::size_t i : order) {
            asked_.edited ? draw_leg_button(i) : draw_leg_words(i);
        }
        for (const bool by_roof : {false, true}) {  // what is no button takes what room is left
            for (std::size_t i = asked_.edited ? asked_.bends.size() : 0; i-- > 0;) {
                if (is_by_roof(i) == by_roof) {
                    draw_bend(i);
                }
            }
        }
        for (std::size_t i = 0; asked_.edited && asked_.hem < 0 && i < names_.size(); ++i) {
            draw_circle(static_cast<int>(i));
        }
        return picked_;
    }

  private:
    [[nodiscard]] const std::vector<ImVec2>& corners() const { return line_.corners; }

    void draw_stroke() {
        const Palette& p = ui_.colours();
        ImDrawList* const ink = ui_.ink();
        ink->PushClipRect({page_.x, page_.y}, {page_.right(), page_.bottom()}, true);
        ink->AddPolyline(line_.stroke.data(), static_cast<int>(line_.stroke.size()), p.ink, 0,
                         ui_.mm(line_mm));
        if (asked_.leg >= 0) {
            const auto leg = static_cast<std::size_t>(asked_.leg);
            ink->AddLine(corners()[leg], corners()[leg + 1], p.chalk, ui_.mm(chosen_mm));
        }
        if (asked_.bend >= 0) {
            ink->AddCircleFilled(corners()[static_cast<std::size_t>(asked_.bend) + 1],
                                 ui_.mm(tick_mm), p.chalk);
        }
        ink->PopClipRect();
    }

    /// The others find a place beside them.
    [[nodiscard]] std::vector<std::size_t> widest_first() const {
        std::vector<std::size_t> order(names_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        const auto& legs = asked_.section.legs;
        const auto chosen = [this](std::size_t i) { return asked_.leg == static_cast<int>(i); };
        std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return chosen(a) != chosen(b) ? chosen(a) : legs[a].width > legs[b].width;
        });
        return order;
    }

    [[nodiscard]] bool is_by_roof(std::size_t bend) const {
        return std::abs(asked_.bends[bend]) < 180 &&
               asked_.section.legs[bend + 1].bend.fold_of.has_value();
    }

    /// Beside what shows of it: of a hem drawn large the rest of the trim lies off the page.
    std::optional<Box> find(ImVec2 a, ImVec2 b, Box size, Need need = Need::room) {
        const std::optional<PartOfLine> shows = part_in(page_, a.x, a.y, b.x, b.y);
        if (!shows) {
            return std::nullopt;
        }
        const ImVec2 way{b.x - a.x, b.y - a.y};
        b = {a.x + way.x * shows->to, a.y + way.y * shows->to};
        a = {a.x + way.x * shows->from, a.y + way.y * shows->from};
        const std::optional<Box> place = place_beside(ui_, a, b, size, page_, taken_, need);
        if (place) {
            draw_leader(ui_, {(a.x + b.x) / 2, (a.y + b.y) / 2}, *place, taken_);
        }
        return place;
    }

    void draw_leg_button(std::size_t i) {
        const Text words = glued(names_[i], "\n", width_of(asked_, i));
        const auto place =
            find(corners()[i], corners()[i + 1], button_size(ui_, words), Need::must);
        const bool chosen = asked_.leg == static_cast<int>(i);
        if (place && ui_.button("leg " + std::to_string(i), words, *place,
                                chosen ? Look::chosen : Look::plain, Size::bold)) {
            picked_.leg = static_cast<int>(i);
        }
    }

    void draw_leg_words(std::size_t i) {
        const Text& name = names_[i];
        const auto place = find(corners()[i], corners()[i + 1], words_size(ui_, name));
        if (!place) {
            return;
        }
        if (ui_.area("leg " + std::to_string(i), *place, name)) {
            picked_.leg = static_cast<int>(i);
        }
        const float line = ui_.line_height(Size::small);
        if (ui_.text_width(name, Size::small) <= place->w) {
            ui_.text(place->mid_x(), place->mid_y() - line, name, Size::small, Align::centre,
                     ui_.colours().soft);
            ui_.text(place->mid_x(), place->mid_y(), width_of(asked_, i), Size::small,
                     Align::centre);
        } else {
            const float used =
                ui_.paragraph(place->x, place->y, place->w, name, Size::small, ui_.colours().soft);
            ui_.text(place->x, place->y + used, width_of(asked_, i), Size::small);
        }
    }

    /// The fold of a hem says what kind of hem it is.
    void draw_bend(std::size_t i) {
        const SectionLeg& leg = asked_.section.legs[i + 1];
        const bool is_hem = std::abs(asked_.bends[i]) >= 180;
        const std::size_t hem = leg.hem != Hem::none ? i + 1 : i;
        const Text words =
            is_hem ? words_of(asked_.section.legs[hem].hem) : bend_words(leg, asked_.bends[i]);
        const bool chosen =
            is_hem ? asked_.hem == static_cast<int>(hem) : asked_.bend == static_cast<int>(i);
        const ImVec2 corner = corners()[i + 1];
        const bool by_roof = is_by_roof(i);
        const auto place =
            find(corner, corner, button_size(ui_, words), by_roof ? Need::clear : Need::must);
        if (!place) {
            return;
        }
        const std::string name = (is_hem ? "hem " : "bend ") + std::to_string(is_hem ? hem : i);
        if (ui_.button(name, words, *place,
                       by_roof  ? Look::off
                       : chosen ? Look::chosen
                                : Look::plain,
                       Size::bold)) {
            (is_hem ? picked_.hem : picked_.bend) = static_cast<int>(is_hem ? hem : i);
        }
    }

    /// A hem too small to be seen, larger.
    void draw_circle(int i) {
        const auto leg = static_cast<std::size_t>(i);
        const ImVec2 a = corners()[leg], b = corners()[leg + 1];
        const bool is_small = std::hypot(b.x - a.x, b.y - a.y) < ui_.mm(hem_mm_clear);
        if (asked_.section.legs[leg].hem == Hem::none || names_.size() < 2 || !is_small ||
            page_.h < ui_.mm(circle_room_mm)) {
            return;
        }
        const float r = ui_.mm(circle_mm);
        const auto place = find(a, b, {0, 0, 2 * r, 2 * r}, Need::clear);
        if (!place) {
            return;
        }
        const Palette& p = ui_.colours();
        const ImVec2 middle{place->mid_x(), place->mid_y()};
        const std::vector<ImVec2> large = hem_enlarged(asked_, line_, i, middle, r * 0.72F);
        ui_.ink()->AddCircleFilled(middle, r, p.paper);
        ui_.ink()->AddPolyline(large.data(), static_cast<int>(large.size()), p.ink, 0,
                               ui_.mm(line_mm));
        ui_.ink()->AddCircle(middle, r, p.soft, 0, ui_.mm(0.3F));
    }

    Ui& ui_;
    const ProfileAsked& asked_;
    Box page_;
    std::vector<Text> names_;
    ProfileLine line_;
    ProfileTaken taken_;
    Touched picked_;
};

}  // namespace

Touched draw_profile(Ui& ui, const ProfileAsked& asked, Box box) {
    return Profile(ui, asked, box).draw();
}

}  // namespace hemline
