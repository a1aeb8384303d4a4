#include "engine/handover/roof_drawing.h"

#include <algorithm>
#include <cmath>

#include "engine/handover/page_room.h"
#include "engine/handover/roof_ink.h"
#include "engine/handover/svg.h"
#include "engine/roof/nearest.h"

namespace hemline {

namespace {

constexpr double page_wide = 279.4, page_high = 215.9;            // Letter lying, mm
constexpr double plan_left = 14, plan_top = 30, plan_wide = 176;  // the plan's room
constexpr double plan_high = 160, list_left = 204, row_high = 4.6;
constexpr double letter_high = 3.2, letter_least = 2.2;

class RoofDrawing {
  public:
    RoofDrawing(const Roof& roof, std::span<const RoofBody> bodies, const PageWords& words)
        : roof_(roof), words_(words), sides_(sides_of(bodies)) {
        fit();
    }

    std::string drawn() {
        std::string plan;
        for (const BodyPlane& plane : roof_.planes) {
            plan += toned(plane);
        }
        for (const BodyEdge& edge : roof_.edges) {
            room_.keep_clear(on_page(edge.from), on_page(edge.to));
            plan += edge_line(edge.kind, on_page(edge.from), on_page(edge.to));
        }
        for (const BodyEdge& edge : roof_.edges) {
            plan += label(edge);
        }
        for (const BodyPlane& plane : roof_.planes) {
            plan += fall(plane);
        }
        const double high = std::max(
            page_high,
            44 + row_high * static_cast<double>(roof_.edges.size() + drawn_kinds().size()));
        std::string svg =
            "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" +
            page_figure(page_wide) + "mm\" height=\"" + page_figure(high) + "mm\" viewBox=\"0 0 " +
            page_figure(page_wide) + ' ' + page_figure(high) +
            "\" font-family=\"B612, sans-serif\" fill=\"#14191c\">\n";
        const std::string title = words_.in_words(say("Roof, worked out from the walk"));
        svg += "<title>" + xml_text(title) + "</title>\n";
        svg += "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n";
        svg += page_text({plan_left, 14}, 5.4, title, " font-weight=\"bold\"");
        svg += page_text({plan_left, 21}, letter_high,
                         words_.in_words(say("Never cut from it: measure each edge.")));
        return svg + plan + scale_bar() + list() + "</svg>\n";
    }

  private:
    void fit() {
        Space least = roof_.edges.front().from, most = least;
        const auto take = [&](const Space& place) {
            least = {std::min(least.x, place.x), std::min(least.y, place.y), 0};
            most = {std::max(most.x, place.x), std::max(most.y, place.y), 0};
        };
        for (const BodyEdge& edge : roof_.edges) {
            take(edge.from);
            take(edge.to);
        }
        scale_ = std::min(plan_wide / std::max(most.x - least.x, 1.0),
                          plan_high / std::max(most.y - least.y, 1.0));
        left_ = plan_left + (plan_wide - scale_ * (most.x - least.x)) / 2 - scale_ * least.x;
        low_ = plan_top + (plan_high + scale_ * (most.y - least.y)) / 2 + scale_ * least.y;
    }

    [[nodiscard]] PlanVector on_page(const Space& place) const {
        return {left_ + scale_ * place.x, low_ - scale_ * place.y};
    }

    /// Lightly toned by the way it falls.
    [[nodiscard]] std::string toned(const BodyPlane& plane) const {
        const PlanVector down = downhill(plane);
        const int tone = 236 + static_cast<int>(std::lround(10 * (0.8 * down.x + 0.6 * down.y)));
        std::string path;
        for (const auto* walks : {&plane.pieces, &plane.holes}) {
            for (const std::vector<Space>& walk : *walks) {
                for (std::size_t i = 0; i < walk.size(); ++i) {
                    const PlanVector at = on_page(walk[i]);
                    path += (i == 0 ? "M" : " L") + page_figure(at.x) + ' ' + page_figure(at.y);
                }
                path += " Z ";
            }
        }
        const std::string ink = std::to_string(tone);
        return "<path d=\"" + path + "\" fill-rule=\"evenodd\" fill=\"rgb(" + ink + ',' + ink +
               ',' + std::to_string(tone - 4) + ")\"/>\n";
    }

    /// On the page, of length 1: from the plane's height along its corners.
    [[nodiscard]] PlanVector downhill(const BodyPlane& plane) const {
        const std::vector<Space>& walk = plane.pieces.front();
        Space normal;
        for (std::size_t i = 0; i < walk.size(); ++i) {
            normal = normal + cross(walk[i] - walk[0], walk[(i + 1) % walk.size()] - walk[0]);
        }
        const double length = std::hypot(normal.x, normal.y);
        return length > 0 ? PlanVector{normal.x / length, -normal.y / length} : PlanVector{0, 1};
    }

    [[nodiscard]] std::string length_words(double length) const {
        return words_.in_words(Text(nearest_nm(length)));
    }

    /// Name and length along the edge, outside the roof where it is the roof's end.
    [[nodiscard]] std::string label(const BodyEdge& edge) {
        const PlanVector from = on_page(edge.from), to = on_page(edge.to);
        const std::string length = length_words(edge.length);
        const int side = is_roof_on_left(from, to) ? -1 : 1;
        for (double high = letter_high; high >= letter_least; high -= 0.25) {
            for (const std::string& words : {edge.id + "  " + length, edge.id}) {
                PageBox box = {{}, {}, letters_wide(words, high) + high, 1.5 * high};
                const bool fits = box.wide < length_of(to - from) * (words == edge.id ? 2 : 1);
                if ((words == edge.id && high - 0.25 >= letter_least) || !fits ||
                    !find_room_along(room_, from, to, side, box)) {
                    continue;
                }
                room_.take(box);
                const double turned = degrees_in(std::atan2(box.along.y, box.along.x));
                std::string at = "<text transform=\"translate(" + page_figure(box.middle.x) + ' ' +
                                 page_figure(box.middle.y) + ") rotate(" + page_figure(turned) +
                                 ")\" font-size=\"" + page_figure(high) + "\" y=\"" +
                                 page_figure(0.36 * high) +
                                 "\" text-anchor=\"middle\"><tspan "
                                 "font-weight=\"bold\">" +
                                 xml_text(edge.id) + "</tspan>";
                if (words != edge.id) {
                    at += "<tspan dx=\"" + page_figure(0.5 * high) + "\">" + xml_text(length) +
                          "</tspan>";
                }
                return at + "</text>\n";
            }
        }
        return "";
    }

    /// Whether a plane lies a little to the left of the line, as it runs on the page.
    [[nodiscard]] bool is_roof_on_left(PlanVector from, PlanVector to) const {
        const PlanVector way = to - from;
        const PlanVector seen =
            (from + to) * 0.5 + PlanVector{way.y, -way.x} * (0.5 / length_of(way));
        return std::any_of(roof_.planes.begin(), roof_.planes.end(),
                           [&](const BodyPlane& plane) { return lies_in(plane, seen); });
    }

    [[nodiscard]] bool lies_in(const BodyPlane& plane, PlanVector seen) const {
        bool in = false;
        for (const auto* walks : {&plane.pieces, &plane.holes}) {
            for (const std::vector<Space>& walk : *walks) {
                for (std::size_t i = 0; i < walk.size(); ++i) {
                    const PlanVector a = on_page(walk[i]), b = on_page(walk[(i + 1) % walk.size()]);
                    if ((a.y > seen.y) != (b.y > seen.y) &&
                        seen.x < a.x + (seen.y - a.y) / (b.y - a.y) * (b.x - a.x)) {
                        in = !in;
                    }
                }
            }
        }
        return in;
    }

    /// An arrow the way water runs, and the pitch after it, as large as there is room for.
    [[nodiscard]] std::string fall(const BodyPlane& plane) {
        const std::string pitch = print_slope(*sides_[plane.side]->pitch);
        for (double high = letter_high; high >= letter_least; high -= 0.5) {
            const double wide = letters_wide(pitch, high);
            const PageBox needed = {{}, {1, 0}, std::max(wide, 2.6 * high) + high, 4.6 * high};
            const std::optional<PlanVector> middle = widest_place(plane, needed);
            if (middle) {
                room_.take({*middle, {1, 0}, needed.wide, needed.high});
                return arrow(*middle - PlanVector{0, 0.9 * high}, downhill(plane), high) +
                       page_text(*middle + PlanVector{0, 1.9 * high}, high, pitch,
                                 " text-anchor=\"middle\"");
            }
        }
        return "";
    }

    /// Of places on a grid over the plane the one nearest its middle where the box has room.
    [[nodiscard]] std::optional<PlanVector> widest_place(const BodyPlane& plane,
                                                         PageBox box) const {
        PlanVector least = on_page(plane.pieces[0][0]), most = least, sum;
        for (const Space& corner : plane.pieces[0]) {
            const PlanVector at = on_page(corner);
            least = {std::min(least.x, at.x), std::min(least.y, at.y)};
            most = {std::max(most.x, at.x), std::max(most.y, at.y)};
            sum = sum + at * (1 / static_cast<double>(plane.pieces[0].size()));
        }
        std::optional<PlanVector> best;
        constexpr int places = 24;
        for (int i = 1; i < places * places; ++i) {
            const PlanVector share = {static_cast<double>(i % places) / places,
                                      static_cast<double>(i / places) / places};
            box.middle = {least.x + share.x * (most.x - least.x),
                          least.y + share.y * (most.y - least.y)};
            if ((!best || length_of(box.middle - sum) < length_of(*best - sum)) &&
                lies_in(plane, box.middle) && room_.is_free(box)) {
                best = box.middle;
            }
        }
        return best;
    }

    static std::string arrow(PlanVector middle, PlanVector way, double high) {
        const PlanVector tip = middle + way * (1.2 * high), tail = middle - way * (1.2 * high);
        const PlanVector aside = PlanVector{-way.y, way.x} * (0.4 * high);
        const PlanVector back = tip - way * (0.7 * high), left = back + aside, right = back - aside;
        return "<path d=\"M" + page_figure(tail.x) + ' ' + page_figure(tail.y) + " L" +
               page_figure(tip.x) + ' ' + page_figure(tip.y) + " M" + page_figure(left.x) + ' ' +
               page_figure(left.y) + " L" + page_figure(tip.x) + ' ' + page_figure(tip.y) + " L" +
               page_figure(right.x) + ' ' + page_figure(right.y) +
               "\" fill=\"none\" stroke=\"#14191c\" stroke-width=\"0.35\"/>\n";
    }

    [[nodiscard]] std::string scale_bar() const {
        const Length ten = feet(10);
        const double wide = scale_ * static_cast<double>(ten.nm());
        const PlanVector at = {plan_left, 208};
        return "<path d=\"M" + page_figure(at.x) + ' ' + page_figure(at.y - 1) + " v2 h" +
               page_figure(wide) +
               " v-2\" fill=\"none\" stroke=\"#14191c\" stroke-width=\"0.4\"/>\n" +
               page_text({at.x + wide + 2, at.y + 1}, letter_high, words_.in_words(Text(ten)));
    }

    /// Every edge with its length and how far that may be off, and what the lines mean.
    [[nodiscard]] std::string list() const {
        std::string rows;
        double y = 14;
        const auto row = [&](const std::string& id, const std::string& kind,
                             const std::string& length, const std::string& within) {
            rows += page_text({list_left, y}, letter_high, id, " font-weight=\"bold\"");
            rows += page_text({list_left + 9, y}, letter_least + 0.5, kind);
            rows +=
                page_text({list_left + 48, y}, letter_least + 0.5, length, " text-anchor=\"end\"");
            rows +=
                page_text({list_left + 71, y}, letter_least + 0.5, within, " text-anchor=\"end\"");
            y += row_high;
        };
        row("", "", words_.in_words(say("expected")), words_.in_words(say("within")));
        for (const BodyEdge& edge : roof_.edges) {
            row(edge.id, words_.in_words(spoken(edge.kind)), length_words(edge.length),
                words_.in_words(Text(CloseLength{nearest_nm(edge.off)})));
        }
        y += row_high / 2;
        for (const EdgeKind kind : drawn_kinds()) {
            if (std::none_of(roof_.edges.begin(), roof_.edges.end(),
                             [&](const BodyEdge& edge) { return edge.kind == kind; })) {
                continue;
            }
            rows += edge_line(kind, {list_left, y - 1}, {list_left + 14, y - 1});
            rows +=
                page_text({list_left + 18, y}, letter_least + 0.5, words_.in_words(spoken(kind)));
            y += row_high;
        }
        return rows;
    }

    const Roof& roof_;
    const PageWords& words_;
    SidesOfRoof sides_;
    PageRoom room_;
    double scale_ = 1, left_ = 0, low_ = 0;
};

}  // namespace

std::string roof_svg(const Roof& roof, std::span<const RoofBody> bodies, const PageWords& words) {
    return RoofDrawing(roof, bodies, words).drawn();
}

}  // namespace hemline
