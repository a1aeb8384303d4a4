#include "tests/field/picture.h"

#include <imgui.h>
#include <stb_image.h>
#include <stb_image_write.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdlib>

namespace hemline {

namespace {

using Rgba = std::array<double, 4>;  // 0…1

Rgba unpack(std::uint32_t colour) {
    return {((colour >> IM_COL32_R_SHIFT) & 0xFF) / 255.0,
            ((colour >> IM_COL32_G_SHIFT) & 0xFF) / 255.0,
            ((colour >> IM_COL32_B_SHIFT) & 0xFF) / 255.0,
            ((colour >> IM_COL32_A_SHIFT) & 0xFF) / 255.0};
}

/// The letters' atlas: how much ink lies at a place, 0…1; its colors are white throughout.
class Atlas {
  public:
    Atlas() { ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&pixels_, &w_, &h_); }
    [[nodiscard]] double ink(double u, double v) const {
        const double x = u * w_ - 0.5;
        const double y = v * h_ - 0.5;
        const double right = x - std::floor(x);
        const double below = y - std::floor(y);
        const int column = static_cast<int>(std::floor(x));
        const int row = static_cast<int>(std::floor(y));
        const double upper = at(column, row) * (1 - right) + at(column + 1, row) * right;
        const double lower = at(column, row + 1) * (1 - right) + at(column + 1, row + 1) * right;
        return upper * (1 - below) + lower * below;
    }

  private:
    [[nodiscard]] double at(int column, int row) const {
        const int x = std::clamp(column, 0, w_ - 1);
        const int y = std::clamp(row, 0, h_ - 1);
        return pixels_[y * w_ + x] / 255.0;
    }
    unsigned char* pixels_ = nullptr;
    int w_ = 0, h_ = 0;
};

struct Area {
    int left, top, right, bottom;
};

/// Twice the area of a-b-c, positive when they go round clockwise on the screen.
double turn(ImVec2 a, ImVec2 b, double x, double y) {
    return (double{b.x} - a.x) * (y - a.y) - (double{b.y} - a.y) * (x - a.x);
}

/// The middle of a pixel on an edge belongs to only one of the two triangles that share the edge.
bool owns_edge(ImVec2 a, ImVec2 b) { return a.y > b.y || (a.y == b.y && b.x > a.x); }

bool is_inside(double side, ImVec2 a, ImVec2 b) {
    return side > 0 || (side == 0 && owns_edge(a, b));
}

class Brush {
  public:
    Brush(Picture& picture) : picture_(picture) {}

    void triangle(ImDrawVert a, ImDrawVert b, ImDrawVert c, Area clip) {
        double area = turn(a.pos, b.pos, c.pos.x, c.pos.y);
        if (area == 0) {
            return;
        }
        if (area < 0) {
            std::swap(b, c);
            area = -area;
        }
        const auto [left, right] = std::minmax({a.pos.x, b.pos.x, c.pos.x});
        const auto [top, bottom] = std::minmax({a.pos.y, b.pos.y, c.pos.y});
        const Area part{std::max(clip.left, static_cast<int>(std::floor(left))),
                        std::max(clip.top, static_cast<int>(std::floor(top))),
                        std::min(clip.right, static_cast<int>(std::ceil(right)) + 1),
                        std::min(clip.bottom, static_cast<int>(std::ceil(bottom)) + 1)};
        const Rgba of_a = unpack(a.col);
        const Rgba of_b = unpack(b.col);
        const Rgba of_c = unpack(c.col);
        for (int row = part.top; row < part.bottom; ++row) {
            for (int column = part.left; column < part.right; ++column) {
                const double x = column + 0.5;
                const double y = row + 0.5;
                const double to_c = turn(a.pos, b.pos, x, y);
                const double to_a = turn(b.pos, c.pos, x, y);
                const double to_b = turn(c.pos, a.pos, x, y);
                if (!is_inside(to_c, a.pos, b.pos) || !is_inside(to_a, b.pos, c.pos) ||
                    !is_inside(to_b, c.pos, a.pos)) {
                    continue;
                }
                const double wa = to_a / area;
                const double wb = to_b / area;
                const double wc = to_c / area;
                Rgba colour{};
                for (std::size_t i = 0; i < 4; ++i) {
                    colour[i] = wa * of_a[i] + wb * of_b[i] + wc * of_c[i];
                }
                colour[3] *= atlas_.ink(wa * a.uv.x + wb * b.uv.x + wc * c.uv.x,
                                        wa * a.uv.y + wb * b.uv.y + wc * c.uv.y);
                blend(column, row, colour);
            }
        }
    }

  private:
    void blend(int column, int row, const Rgba& colour) {
        std::uint8_t* const pixel =
            &picture_
                 .rgb[3 * (static_cast<std::size_t>(row) * static_cast<std::size_t>(picture_.w) +
                           static_cast<std::size_t>(column))];
        for (std::size_t i = 0; i < 3; ++i) {
            const double mixed = colour[i] * 255 * colour[3] + pixel[i] * (1 - colour[3]);
            pixel[i] = static_cast<std::uint8_t>(std::lround(mixed));
        }
    }
    Picture& picture_;
    Atlas atlas_;
};

Area clip_of(const ImDrawCmd& command, const Picture& picture) {
    return {std::max(0, static_cast<int>(command.ClipRect.x)),
            std::max(0, static_cast<int>(command.ClipRect.y)),
            std::min(picture.w, static_cast<int>(command.ClipRect.z)),
            std::min(picture.h, static_cast<int>(command.ClipRect.w))};
}

}  // namespace

Picture paint(const ImDrawData& data, Colour ground) {
    Picture picture{static_cast<int>(data.DisplaySize.x), static_cast<int>(data.DisplaySize.y), {}};
    const Rgba paper = unpack(ground);
    for (long i = 0; i < long{picture.w} * picture.h * 3; ++i) {
        picture.rgb.push_back(
            static_cast<std::uint8_t>(std::lround(paper[static_cast<std::size_t>(i % 3)] * 255)));
    }
    Brush brush(picture);
    for (int n = 0; n < data.CmdListsCount; ++n) {
        const ImDrawList& list = *data.CmdLists[n];
        for (const ImDrawCmd& command : list.CmdBuffer) {
            const Area clip = clip_of(command, picture);
            const auto vertex = [&](unsigned int i) {
                const ImDrawIdx index = list.IdxBuffer[static_cast<int>(command.IdxOffset + i)];
                return list.VtxBuffer[static_cast<int>(command.VtxOffset) + index];
            };
            for (unsigned int i = 0; i + 2 < command.ElemCount; i += 3) {
                brush.triangle(vertex(i), vertex(i + 1), vertex(i + 2), clip);
            }
        }
    }
    return picture;
}

bool write_png(const Picture& picture, const std::filesystem::path& file) {
    stbi_flip_vertically_on_write(0);
    return stbi_write_png(file.c_str(), picture.w, picture.h, 3, picture.rgb.data(),
                          picture.w * 3) != 0;
}

Picture read_png(const std::filesystem::path& file) {
    Picture picture;
    int channels = 0;
    unsigned char* const bytes = stbi_load(file.c_str(), &picture.w, &picture.h, &channels, 3);
    if (bytes == nullptr) {
        return {};
    }
    picture.rgb.assign(bytes, bytes + std::size_t{3} * static_cast<std::size_t>(picture.w) *
                                          static_cast<std::size_t>(picture.h));
    stbi_image_free(bytes);
    return picture;
}

long differing(const Picture& a, const Picture& b, int by) {
    if (a.w != b.w || a.h != b.h) {
        return long{std::max(a.w, b.w)} * std::max(a.h, b.h);
    }
    long pixels = 0;
    for (std::size_t i = 0; i + 2 < a.rgb.size(); i += 3) {
        bool differs = false;
        for (std::size_t k = i; k < i + 3; ++k) {
            differs = differs || std::abs(int{a.rgb[k]} - int{b.rgb[k]}) > by;
        }
        pixels += differs ? 1 : 0;
    }
    return pixels;
}

}  // namespace hemline
