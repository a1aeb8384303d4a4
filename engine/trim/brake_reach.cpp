#include "engine/trim/brake_reach.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace hemline {

namespace {

constexpr double touch_nm = 1000;         // metal may touch: a depth up to this is not a collision
constexpr double rolled_in_nm = 793'750;  // taken off a folded hem: 1/32 in, its edge gives way
constexpr double step_degrees = 3;

struct ProfilePoint {
    double x = 0, y = 0;
};
struct Stretch {
    ProfilePoint a, b;
    std::size_t leg = 0;
};
using Bar = std::array<ProfilePoint, 4>;  // counter-clockwise

double in_nm(Length length) { return static_cast<double>(length.nm()); }

ProfilePoint turned(ProfilePoint p, double degrees) {
    const double c = std::cos(radians_of(degrees)), s = std::sin(radians_of(degrees));
    return {p.x * c - p.y * s, p.x * s + p.y * c};
}

/// The legs on one side of the bend line, lying along +x from it, with the bends made so far.
std::vector<Stretch> side_of(const StripOnBrake& strip, std::size_t bend, Clamped side,
                             double turn_up) {
    std::vector<Stretch> stretches;
    ProfilePoint at;
    double heading = 0;
    bool folded_over = false;
    std::size_t leg = side == Clamped::last_legs ? bend + 1 : bend;
    while (true) {
        const double length =
            std::max(strip.stretches[leg] - (folded_over ? rolled_in_nm : 0), touch_nm);
        const ProfilePoint to{at.x + length * std::cos(radians_of(heading)),
                              at.y + length * std::sin(radians_of(heading))};
        stretches.push_back({at, to, leg});
        at = to;
        if (side == Clamped::last_legs ? leg + 1 == strip.stretches.size() : leg == 0) {
            return stretches;
        }
        const std::size_t next = side == Clamped::last_legs ? leg : leg - 1;
        heading += strip.made[next] ? turn_up * strip.bends[next] : 0;
        folded_over = strip.made[next] && std::abs(strip.bends[next]) >= 180;
        leg = side == Clamped::last_legs ? leg + 1 : leg - 1;
    }
}

/// Whether the stretch runs into the bar, which is shrunk by the depth that may touch.
bool runs_into(const Stretch& stretch, const Bar& bar) {
    double from = 0, to = 1;
    for (std::size_t i = 0; i < bar.size(); ++i) {
        const ProfilePoint p = bar[i], q = bar[(i + 1) % bar.size()];
        const double length = std::hypot(q.x - p.x, q.y - p.y);
        const auto inside = [&](ProfilePoint r) {
            return ((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)) / length - touch_nm;
        };
        const double a = inside(stretch.a), b = inside(stretch.b);
        if (a <= 0 && b <= 0) {
            return false;
        }
        if (a < 0) {
            from = std::max(from, a / (a - b));
        } else if (b < 0) {
            to = std::min(to, a / (a - b));
        }
    }
    return from < to;
}

bool cross(const Stretch& s, const Stretch& t) {
    const double sx = s.b.x - s.a.x, sy = s.b.y - s.a.y;
    const double tx = t.b.x - t.a.x, ty = t.b.y - t.a.y;
    const double across = sx * ty - sy * tx;
    const double lengths = std::hypot(sx, sy) * std::hypot(tx, ty);
    if (std::abs(across) < lengths * 1e-9) {
        return false;  // side by side: metal on metal
    }
    const double u = ((t.a.x - s.a.x) * ty - (t.a.y - s.a.y) * tx) / across;
    const double v = ((t.a.x - s.a.x) * sy - (t.a.y - s.a.y) * sx) / across;
    const double su = touch_nm / std::hypot(sx, sy), tv = touch_nm / std::hypot(tx, ty);
    return u > su && u < 1 - su && v > tv && v < 1 - tv;
}

struct Bars {
    Bar jaw, bed, leaf;
};

Bars bars_of(const Brake& brake) {
    const double foot = in_nm(brake.jaw_foot), tall = in_nm(brake.jaw_height);
    const double back = tall * std::sin(radians_of(brake.jaw_lean));
    const double up = tall * std::cos(radians_of(brake.jaw_lean));
    const double low = -in_nm(brake.bars_height);
    const double bed = -in_nm(brake.bed_depth), leaf = in_nm(brake.leaf_depth);
    return {{ProfilePoint{0, 0}, {-back, up}, {-foot - back, up}, {-foot, 0}},
            {ProfilePoint{0, 0}, {bed, 0}, {bed, low}, {0, low}},
            {ProfilePoint{0, 0}, {0, low}, {leaf, low}, {leaf, 0}}};
}

Stretch mirrored(const Stretch& s) { return {{-s.a.x, s.a.y}, {-s.b.x, s.b.y}, s.leg}; }
Stretch turned(const Stretch& s, double degrees) {
    return {turned(s.a, degrees), turned(s.b, degrees), s.leg};
}

}  // namespace

Text in_the_way_of(const StripOnBrake& strip, std::size_t bend, Clamped clamped,
                   const Brake& brake) {
    const Bars bars = bars_of(brake);
    // Drawn with this bend turning up; a bend of the other sign then turns down.
    const double turn_up = strip.bends[bend] > 0 ? 1 : -1;
    const bool first = clamped == Clamped::first_legs;
    const auto name = [&](const Stretch& s) { return spoken(strip.names[s.leg]); };
    std::vector<Stretch> held = side_of(strip, bend, clamped, turn_up);
    for (Stretch& s : held) {
        s = mirrored(s);
        if (runs_into(s, bars.jaw)) {
            return say("the {1} runs into the jaw", name(s));
        }
        if (runs_into(s, bars.bed)) {
            return say("the {1} runs into the bed", name(s));
        }
        if (std::max(s.a.x, s.b.x) > touch_nm) {
            return say("the {1} lies over the bend line", name(s));
        }
    }
    const std::vector<Stretch> free =
        side_of(strip, bend, first ? Clamped::last_legs : Clamped::first_legs, turn_up);
    for (const Stretch& s : free) {
        if (runs_into(s, bars.leaf)) {
            return say("the {1} runs into the leaf", name(s));
        }
        if (std::min(s.a.x, s.b.x) < -touch_nm && std::abs(s.a.y) < touch_nm) {
            return say("the {1} lies over the bend line", name(s));
        }
    }
    const double full = std::abs(strip.bends[bend]);
    const double most = full >= 180 ? degrees_of(brake.hem_turn) : full;
    for (double degrees = std::min(step_degrees, most);;
         degrees = std::min(degrees + step_degrees, most)) {
        for (const Stretch& at_rest : free) {
            const Stretch s = turned(at_rest, degrees);
            if (runs_into(s, bars.jaw)) {
                return say("the {1} runs into the jaw", name(s));
            }
            if (runs_into(s, bars.bed)) {
                return say("the {1} runs into the bed", name(s));
            }
            if (std::any_of(held.begin(), held.end(),
                            [&](const Stretch& h) { return cross(s, h); })) {
                return say("the {1} runs into the clamped side", name(s));
            }
        }
        if (degrees >= most) {
            return {};
        }
    }
}

}  // namespace hemline
