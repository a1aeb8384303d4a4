#include "field/screens/roof/draw_roof_plan.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <numeric>

#include "engine/roof/edge_shape.h"
#include "engine/roof/hip.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/status_mark.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float mark_mm = 5.5F, touch_mm = 11, gap_mm = 3, corner_mm = 2.4F;
constexpr float away_mm_most = 9;  // of words from the middle of the letter they go with
constexpr std::size_t suspects_most = 3;

ImVec2 between(ImVec2 a, ImVec2 b, float t) {
    return {a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t};
}

/// One line on the screen, with the way to the inside of the roof at right angles to it.
struct Drawn {
    const OutlineLine* line;
    ImVec2 from, to, along, inside;
    float length;
    const EdgeWork* work;
    EdgeStatus status;
};

struct RoofPage {
    Ui& ui;
    const State& state;
    std::vector<Drawn> lines;
    std::vector<Box> taken, touched;

    [[nodiscard]] bool is_free(Box box, const std::vector<Box>& among, float gap) const {
        return std::none_of(among.begin(), among.end(), [&](const Box& other) {
            const Box both = common_of(inset(other, -gap), box);
            return both.w > 0 && both.h > 0;
        });
    }
};

/// The lines in the box, as large as it allows, upright on the page as the first edge is faced.
std::vector<Drawn> placed(const State& state, Box box) {
    const std::vector<OutlineLine>& lines = state.outline->outline.lines;
    double x0 = 0, x1 = 0, y0 = 0, y1 = 0;
    for (const OutlineLine& line : lines) {
        for (const PlanPoint p : {line.from, line.to}) {
            x0 = std::min(x0, static_cast<double>(p.x.nm()));
            x1 = std::max(x1, static_cast<double>(p.x.nm()));
            y0 = std::min(y0, static_cast<double>(p.y.nm()));
            y1 = std::max(y1, static_cast<double>(p.y.nm()));
        }
    }
    const double scale = std::min(static_cast<double>(box.w) / std::max(x1 - x0, 1.0),
                                  static_cast<double>(box.h) / std::max(y1 - y0, 1.0));
    const auto at = [&](PlanPoint p) {
        return ImVec2(box.mid_x() + static_cast<float>(
                                        (static_cast<double>(p.x.nm()) - (x0 + x1) / 2) * scale),
                      box.mid_y() - static_cast<float>(
                                        (static_cast<double>(p.y.nm()) - (y0 + y1) / 2) * scale));
    };
    std::vector<Drawn> drawn;
    for (const OutlineLine& line : lines) {
        Drawn one{&line, at(line.from), at(line.to),           {1, 0}, {},
                  0,     nullptr,       EdgeStatus::no_reading};
        one.length = std::hypot(one.to.x - one.from.x, one.to.y - one.from.y);
        if (one.length > 0) {
            one.along = {(one.to.x - one.from.x) / one.length,
                         (one.to.y - one.from.y) / one.length};
        }
        one.inside = {one.along.y, -one.along.x};  // the building on the left; y runs down here
        if (!line.edge.empty()) {
            one.work = edge_of(state, line.edge);
        }
        if (one.work != nullptr) {
            one.status = status_on(state, *one.work);
        }
        drawn.push_back(one);
    }
    return drawn;
}

void draw_dashes(const Ui& ui, ImVec2 a, ImVec2 b, Colour colour, float thick) {
    const float length = std::hypot(b.x - a.x, b.y - a.y);
    const float dash = ui.mm(2.2F), step = dash + ui.mm(1.6F);
    for (float at = 0; at < length; at += step) {
        ui.ink()->AddLine(between(a, b, at / length),
                          between(a, b, std::min(at + dash, length) / length), colour, thick);
    }
}

/// The edge itself: what is not read is dashed, and what is on the roof is heavy.
void draw_line(const Ui& ui, const Drawn& one) {
    const Palette& p = ui.colours();
    const auto line = [&](float thick, Colour colour) {
        ui.ink()->AddLine(one.from, one.to, colour, ui.mm(thick));
    };
    switch (one.status) {
        case EdgeStatus::no_reading:
            draw_dashes(ui, one.from, one.to, one.work == nullptr ? p.hairline : p.ink,
                        ui.mm(0.5F));
            break;
        case EdgeStatus::one_reading:
            line(0.5F, p.ink);
            break;
        case EdgeStatus::readings_disagree:
        case EdgeStatus::pitch_missing:
        case EdgeStatus::undecided:
            line(2.6F, p.ink);
            line(1.6F, p.warn);
            break;
        case EdgeStatus::ready:
            line(1.8F, p.ink);
            line(0.8F, p.paper);
            break;
        case EdgeStatus::cutting:
        case EdgeStatus::fitting:
        case EdgeStatus::to_tick:
            line(1.8F, p.chalk);
            break;
        case EdgeStatus::finished:
            line(2.2F, p.ink);
            break;
    }
}

/// The corner where a line ends: a square where it is one, else its angle, else a question.
void draw_corner(RoofPage& plan, const Drawn& before, const Drawn& after) {
    Ui& ui = plan.ui;
    const ImVec2 at = before.to;
    const auto inside = before.line->inside;
    const float side = ui.mm(corner_mm);
    const ImVec2 in{before.inside.x + after.inside.x, before.inside.y + after.inside.y};
    if (inside == half_turn) {
        return;
    }
    const bool outside_corner = inside == square_out;
    if (const bool inside_corner = inside == square_in; outside_corner || inside_corner) {
        const float way = outside_corner ? side : -side;  // along the two edges, or past them
        const ImVec2 a{at.x - before.along.x * way, at.y - before.along.y * way};
        const ImVec2 b{at.x + after.along.x * way, at.y + after.along.y * way};
        const ImVec2 c{a.x + b.x - at.x, a.y + b.y - at.y};
        ui.ink()->AddLine(a, c, ui.colours().ink, ui.mm(0.3F));
        ui.ink()->AddLine(c, b, ui.colours().ink, ui.mm(0.3F));
        return;
    }
    const std::string words = inside ? print_degrees(*inside) : "?";
    const float length = std::max(0.1F, std::hypot(in.x, in.y));
    const float off = ui.mm(5.5F);
    const ImVec2 middle{at.x + in.x / length * off, at.y + in.y / length * off};
    const float w = ui.text_width(Text(words), Size::small), h = ui.line_height(Size::small);
    const Box place{middle.x - w / 2, middle.y - h / 2, w, h};
    if (plan.is_free(place, plan.taken, 0)) {
        ui.text(place.x, place.y, Text(words), Size::small);
        plan.taken.push_back(place);
    }
}

/// Where the letter stands: on the line, or beside it where others stand there.
std::optional<ImVec2> mark_place(const RoofPage& plan, const Drawn& one) {
    const float r = plan.ui.mm(mark_mm);
    for (const float aside : {0.0F, -1.0F, 1.0F}) {
        for (const float t : {0.5F, 0.3F, 0.7F}) {
            ImVec2 at = between(one.from, one.to, t);
            at.x += one.inside.x * aside * 2.2F * r;
            at.y += one.inside.y * aside * 2.2F * r;
            if (plan.is_free({at.x - r, at.y - r, 2 * r, 2 * r}, plan.taken, plan.ui.mm(0.5F))) {
                return at;
            }
        }
    }
    return std::nullopt;
}

/// What a finger may hit: along the edge where it runs level or upright, else around the letter.
bool draw_touch(RoofPage& plan, const Drawn& one, ImVec2 mark) {
    Ui& ui = plan.ui;
    const float half = ui.mm(touch_mm) / 2;
    // Short of its ends, so that the next edge round the corner has its own.
    const float reach = std::max(0.0F, one.length / 2 - 2 * half - ui.mm(gap_mm));
    const ImVec2 middle = between(one.from, one.to, 0.5F);
    const bool on_line = std::hypot(middle.x - mark.x, middle.y - mark.y) < 1;
    const Box around{mark.x - half, mark.y - half, 2 * half, 2 * half};
    const Box long_one =
        inset(around, -std::abs(one.along.x) * reach, -std::abs(one.along.y) * reach);
    const bool straight = std::abs(one.along.x) < 0.05F || std::abs(one.along.y) < 0.05F;
    for (const Box& box : {on_line && straight ? long_one : around, around}) {
        if (plan.is_free(box, plan.touched, ui.mm(gap_mm))) {
            plan.touched.push_back(box);
            return ui.area("roof " + one.work->edge.id, box, title_of(one.work->edge));
        }
    }
    return false;
}

bool is_clear_of_lines(const RoofPage& plan, Box place) {
    return std::none_of(plan.lines.begin(), plan.lines.end(), [&](const Drawn& line) {
        return is_crossed(place, line.from.x, line.from.y, line.to.x, line.to.y);
    });
}

float distance_to(const Drawn& line, ImVec2 at) {
    const float x = at.x - line.from.x, y = at.y - line.from.y;
    const float t = std::clamp(x * line.along.x + y * line.along.y, 0.0F, line.length);
    return std::hypot(x - line.along.x * t, y - line.along.y * t);
}

/// Whether words there would be taken for this edge's: no other lies nearer.
bool is_nearest(const RoofPage& plan, const Drawn& one, ImVec2 at) {
    return std::all_of(plan.lines.begin(), plan.lines.end(), [&](const Drawn& other) {
        return distance_to(one, at) <= distance_to(other, at) + 1;
    });
}

/// A place for so large words at the mark: inside the roof, then outside, beside the mark or along
/// the edge from it, then farther out. None where all of them are taken.
std::optional<Box> words_place(const RoofPage& plan, const Drawn& one, ImVec2 mark, ImVec2 size,
                               Box page, bool on_lines) {
    const float off = plan.ui.mm(mark_mm + 1);
    for (const float out : {1.0F, 1.7F}) {
        for (const float side : {1.0F, -1.0F}) {
            for (const float shift : {0.0F, 1.0F, -1.0F, 2.0F, -2.0F}) {
                const float across = side * out, along = shift * out;
                const ImVec2 way{one.inside.x * across + one.along.x * along,
                                 one.inside.y * across + one.along.y * along};
                const ImVec2 middle{mark.x + one.inside.x * across * off + way.x * size.x / 2,
                                    mark.y + one.inside.y * across * off + way.y * size.y / 2};
                const Box place{middle.x - size.x / 2, middle.y - size.y / 2, size.x, size.y};
                const Box seen = common_of(place, page);
                const bool astray = out > 1 || shift != 0;  // not right beside the mark
                const float away = std::hypot(std::clamp(mark.x, place.x, place.right()) - mark.x,
                                              std::clamp(mark.y, place.y, place.bottom()) - mark.y);
                if (astray && (on_lines || !is_nearest(plan, one, middle) ||
                               away > plan.ui.mm(away_mm_most))) {
                    continue;
                }
                if (seen.w > place.w - 1 && seen.h > place.h - 1 &&
                    plan.is_free(place, plan.taken, plan.ui.mm(0.5F)) &&
                    (on_lines || is_clear_of_lines(plan, inset(place, -plan.ui.mm(0.6F))))) {
                    return place;
                }
            }
        }
    }
    return std::nullopt;
}

/// The length so far and the word of its status, clear of every line; where nothing is, on a ground
/// of the paper's colour; the length goes where there is no room for both.
void draw_words(RoofPage& plan, const Drawn& one, ImVec2 mark, Box page) {
    Ui& ui = plan.ui;
    const std::string status = ui.in_words(spoken(one.status));
    const bool sloped = is_sloped(one.work->edge.kind);
    const std::string length = one.line->length == LengthIs::read && !sloped
                                   ? print_length(one.line->plan, plan.state.marks)
                                   : std::string();
    const float line = ui.line_height(Size::small);
    for (const bool with_length : {true, false}) {
        if (with_length && length.empty()) {
            continue;
        }
        const float w = std::max(with_length ? ui.text_width(Text(length), Size::small) : 0.0F,
                                 ui.text_width(Text(status), Size::small));
        const ImVec2 size{w, with_length ? 2 * line : line};
        auto place = words_place(plan, one, mark, size, page, false);
        if (!place && with_length) {
            place = words_place(plan, one, mark, size, page, true);
            if (place) {
                ui.ink()->AddRectFilled({place->x, place->y}, {place->right(), place->bottom()},
                                        ui.colours().paper);
            }
        }
        if (place) {
            if (with_length) {
                ui.text(place->mid_x(), place->y, Text(length), Size::small, Align::centre);
            }
            ui.text(place->mid_x(), place->bottom() - line, Text(status), Size::small,
                    Align::centre, with_length ? ui.colours().soft : ui.colours().ink);
            plan.taken.push_back(*place);
            return;
        }
    }
}

/// Where the walk ends away from where it began.
void draw_miss(RoofPage& plan) {
    const ImVec2 from = plan.lines.back().to, to = plan.lines.front().from;
    if (plan.state.outline->outline.state != OutlineState::misses ||
        std::hypot(from.x - to.x, from.y - to.y) < 1) {
        return;
    }
    plan.ui.ink()->AddLine(from, to, plan.ui.colours().ink, plan.ui.mm(1.6F));
    plan.ui.ink()->AddLine(from, to, plan.ui.colours().waste, plan.ui.mm(1));
}

}  // namespace

std::string draw_roof_plan(Ui& ui, const State& state, Box box) {
    RoofPage plan{ui, state, placed(state, inset(box, ui.mm(mark_mm + 1))), {}, {}};
    std::string touched;
    for (const Drawn& one : plan.lines) {
        draw_line(ui, one);
    }
    draw_miss(plan);
    std::vector<std::size_t> longest(plan.lines.size());
    std::iota(longest.begin(), longest.end(), std::size_t{0});
    std::stable_sort(longest.begin(), longest.end(), [&](std::size_t a, std::size_t b) {
        return plan.lines[a].length > plan.lines[b].length;
    });
    std::vector<std::pair<const Drawn*, ImVec2>> marks;
    for (const std::size_t i : longest) {
        const Drawn& one = plan.lines[i];
        const auto at = one.work == nullptr ? std::nullopt : mark_place(plan, one);
        if (!at) {
            continue;
        }
        const float r = ui.mm(mark_mm);
        plan.taken.push_back({at->x - r, at->y - r, 2 * r, 2 * r});
        marks.emplace_back(&one, *at);
        if (draw_touch(plan, one, *at)) {
            touched = one.work->edge.id;
        }
        ui.ink()->AddCircleFilled(*at, r, ui.colours().paper);
        draw_status_mark(ui, at->x, at->y, r, one.status, one.work->edge.id);
    }
    for (std::size_t i = 0; i < plan.lines.size(); ++i) {
        draw_corner(plan, plan.lines[i], plan.lines[(i + 1) % plan.lines.size()]);
    }
    for (const auto& [one, at] : marks) {
        draw_words(plan, *one, at, box);
    }
    return touched;
}

float draw_roof_words(Ui& ui, const State& state, Box box) {
    const Outline& outline = state.outline->outline;
    float y = box.y;
    y += ui.paragraph(box.x, y, box.w, state_words(outline), Size::bold);
    if (outline.state == OutlineState::misses) {
        y += ui.paragraph(box.x, y, box.w,
                          outline.suspects.empty()
                              ? say("No single correction closes it: read the lengths again.")
                              : say("One of these would close it; measure there again:"),
                          Size::small);
        for (std::size_t i = 0; i < std::min(suspects_most, outline.suspects.size()); ++i) {
            y += ui.paragraph(box.x, y, box.w, suspect_words(outline.suspects[i]), Size::bold);
        }
    }
    for (const OutlineNote& note : outline.notes) {
        y += ui.paragraph(box.x, y, box.w, note.what, Size::small);
    }
    std::string beside;
    for (const std::string& id : state.outline->beside) {
        beside += (beside.empty() ? "" : ", ") + id;
    }
    if (!beside.empty()) {
        y += ui.paragraph(box.x, y, box.w, say("Not on this outline: {1}.", beside), Size::small,
                          ui.colours().soft);
    }
    return y - box.y;
}

}  // namespace hemline
