// Draws the program's icon: an eave trim in section, hooked hem at the bottom, as a PNG.
// usage: draw_icon SIDE FILE.png
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <vector>

#define STB_IMAGE_WRITE_IMPLEMENTATION
#include <stb_image_write.h>

namespace {

struct Point {
    double x, y;
};

// On a unit square: deck flange, face, kick, and the hem folded back. All of it is within the
// middle four fifths, which a round mask does not cut off.
constexpr std::array<Point, 5> section{
    {{0.20, 0.33}, {0.66, 0.24}, {0.66, 0.66}, {0.75, 0.75}, {0.64, 0.75}}};
constexpr std::array<Point, 2> tape{{{0.80, 0.24}, {0.80, 0.66}}};  // a dimension line beside it

double distance(Point p, Point a, Point b) {
    const double dx = b.x - a.x;
    const double dy = b.y - a.y;
    const double along =
        std::clamp(((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy), 0.0, 1.0);
    return std::hypot(p.x - a.x - along * dx, p.y - a.y - along * dy);
}

template <std::size_t N>
double distance(Point p, const std::array<Point, N>& line) {
    double least = 2;
    for (std::size_t i = 0; i + 1 < N; ++i) {
        least = std::min(least, distance(p, line[i], line[i + 1]));
    }
    return least;
}

}  // namespace

int main(int count, char** words) {
    const int side = count == 3 ? std::atoi(words[1]) : 0;
    if (side < 16 || side > 4096) {
        std::fprintf(stderr, "usage: draw_icon SIDE FILE.png (SIDE 16 to 4096)\n");
        return 2;
    }
    std::vector<unsigned char> pixels;
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            const Point p{(x + 0.5) / side, (y + 0.5) / side};
            const auto cover = [&](double away, double half) {
                return std::clamp((half - away) * side + 0.5, 0.0, 1.0);
            };
            const double metal = cover(distance(p, section), 0.035);
            const double line = cover(distance(p, tape), 0.010);
            constexpr std::array<double, 3> paper{251, 250, 246}, ink{20, 24, 28},
                chalk{11, 61, 145};
            for (std::size_t c = 0; c < 3; ++c) {
                const double ground = paper[c] + (chalk[c] - paper[c]) * line;
                pixels.push_back(
                    static_cast<unsigned char>(std::lround(ground + (ink[c] - ground) * metal)));
            }
        }
    }
    return stbi_write_png(words[2], side, side, 3, pixels.data(), side * 3) != 0 ? 0 : 1;
}
