#include "field/screens/card/label_rows.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numeric>
#include <optional>

namespace hemline {

namespace {

constexpr float label_pad_mm = 1.3F, leader_pad_mm = 0.6F;  // at both sides
constexpr float shelf_end_mm = 3;   // a leader ends at least this far from the ends of its label
constexpr float lower_row_mm = 4;   // what a row lower costs a label, as height
constexpr float bend_part = 0.12F;  // of the way sideways, downward
constexpr float bend_mm_least = 1.2F, bend_mm_most = 6, row_gap_mm = 0.8F;

/// Left sides of labels in a row, in order and without overlap, as near as possible to where they
/// are wanted (by least squares: neighbors that would overlap move together).
std::vector<float> spread(const std::vector<float>& wishes, const std::vector<float>& widths,
                          Box box) {
    struct Block {
        float sum;
        std::size_t count;
        [[nodiscard]] float mean() const { return sum / static_cast<float>(count); }
    };
    std::vector<Block> blocks;
    float before = 0;
    for (std::size_t i = 0; i < wishes.size(); ++i) {
        blocks.push_back({wishes[i] - before, 1});
        before += widths[i];
        while (blocks.size() > 1 && blocks.back().mean() < blocks[blocks.size() - 2].mean()) {
            const Block last = blocks.back();
            blocks.pop_back();
            blocks.back().sum += last.sum;
            blocks.back().count += last.count;
        }
    }
    const float most = std::max(box.x, box.right() - before);
    std::vector<float> lefts;
    float offset = 0;
    for (const Block& block : blocks) {
        const float from = std::clamp(block.mean(), box.x, most);
        for (std::size_t i = 0; i < block.count; ++i) {
            lefts.push_back(from + offset);
            offset += widths[lefts.size() - 1];
        }
    }
    return lefts;
}

/// Puts labels, whose rows are chosen, into their places.
class LabelPlacing {
  public:
    LabelPlacing(const std::vector<LabelWanted>& labels, const std::vector<int>& row_of, Box box,
                 float mm)
        : labels_(labels), row_of_(row_of), box_(box), mm_(mm), y_(box.y) {
        rows_.labels.resize(labels.size());
        for (std::size_t i = 0; i < labels.size(); ++i) {
            x_.push_back(labels[i].at);
            rows_.labels[i].leader.push_back({labels[i].at, box.y});
        }
    }

    LabelRows place(int rows) {
        for (int row = 0; row < rows; ++row) {
            place_row(row);
        }
        rows_.height = y_ - box_.y;
        return std::move(rows_);
    }

  private:
    void place_row(int row) {
        std::vector<std::size_t> here;  // labels of this row, and leaders on the way to lower ones
        std::vector<float> wishes;
        std::vector<float> widths;
        float h = 0;
        for (std::size_t i = 0; i < labels_.size(); ++i) {
            if (row_of_[i] < row) {
                continue;
            }
            const bool ends = row_of_[i] == row;
            here.push_back(i);
            widths.push_back(ends ? labels_[i].w + 2 * label_pad_mm * mm_
                                  : 2 * leader_pad_mm * mm_);
            wishes.push_back(x_[i] - widths.back() / 2);
            h = ends ? std::max(h, labels_[i].h) : h;
        }
        const std::vector<float> lefts = spread(wishes, widths, box_);
        std::vector<float> to;
        float farthest = 0;
        for (std::size_t n = 0; n < here.size(); ++n) {
            const bool ends = row_of_[here[n]] == row;
            const float pad =
                std::min(widths[n] / 2, (ends ? label_pad_mm + shelf_end_mm : leader_pad_mm) * mm_);
            to.push_back(std::clamp(x_[here[n]], lefts[n] + pad, lefts[n] + widths[n] - pad));
            const float way = std::abs(to.back() - x_[here[n]]);
            farthest = std::max(farthest, way);
            rows_.bent += way;
        }
        const float top =
            y_ + std::clamp(farthest * bend_part, bend_mm_least * mm_, bend_mm_most * mm_);
        for (std::size_t n = 0; n < here.size(); ++n) {
            const std::size_t i = here[n];
            LabelPlaced& label = rows_.labels[i];
            label.leader.push_back({to[n], top});
            x_[i] = to[n];
            if (row_of_[i] == row) {
                label.box = {lefts[n] + label_pad_mm * mm_, top, labels_[i].w, labels_[i].h};
            } else {
                label.leader.push_back({to[n], top + h + row_gap_mm * mm_});
            }
        }
        y_ = top + h + row_gap_mm * mm_;
    }

    const std::vector<LabelWanted>& labels_;
    const std::vector<int>& row_of_;
    Box box_;
    float mm_;
    float y_;
    std::vector<float> x_;
    LabelRows rows_;
};

/// Tries every way to share the labels among so many rows, in tape order within each half.
class Search {
  public:
    Search(const std::vector<LabelWanted>& labels, Box box, float mm, int rows)
        : labels_(labels),
          box_(box),
          mm_(mm),
          rows_(rows),
          used_(static_cast<std::size_t>(rows), 0.0F),
          row_of_(labels.size(), 0) {}

    std::optional<LabelRows> best() {
        try_from(0, 0, 0);
        return std::move(best_);
    }

  private:
    void try_from(std::size_t i, int left_row, int right_row) {
        if (i == labels_.size()) {
            LabelRows placed = LabelPlacing(labels_, row_of_, box_, mm_).place(rows_);
            const float low =
                lower_row_mm * mm_ *
                static_cast<float>(std::accumulate(row_of_.begin(), row_of_.end(), 0));
            const float cost = placed.height + placed.bent * bend_part + low;
            if (!best_ || cost < cost_) {
                best_ = std::move(placed);
                cost_ = cost;
            }
            return;
        }
        const bool left = labels_[i].half == Side::left;
        for (int row = left ? left_row : right_row; row < rows_; ++row) {
            if (take(i, row, 1)) {
                row_of_[i] = row;
                try_from(i + 1, left ? row : left_row, left ? right_row : row);
            }
            take(i, row, -1);
        }
    }

    /// Reserves the label's width, and its leader's in the rows above; false where a row is too
    /// full.
    bool take(std::size_t i, int row, float sign) {
        bool fits = true;
        for (int r = 0; r <= row; ++r) {
            const float w =
                r == row ? labels_[i].w + 2 * label_pad_mm * mm_ : 2 * leader_pad_mm * mm_;
            float& used = used_[static_cast<std::size_t>(r)];
            used += sign * w;
            fits = fits && used <= box_.w + 0.5F;
        }
        return fits;
    }

    const std::vector<LabelWanted>& labels_;
    Box box_;
    float mm_;
    int rows_;
    std::vector<float> used_;
    std::vector<int> row_of_;
    std::optional<LabelRows> best_;
    float cost_ = 0;
};

}  // namespace

void LabelRows::move_down(float by) {
    for (LabelPlaced& label : labels) {
        label.box.y += by;
        for (Spot& spot : label.leader) {
            spot.y += by;
        }
    }
}

LabelRows rows_of(const std::vector<LabelWanted>& labels, Box box, float mm) {
    const int count = static_cast<int>(labels.size());
    for (int rows = 1; rows < count; ++rows) {
        if (std::optional<LabelRows> found = Search(labels, box, mm, rows).best()) {
            return std::move(*found);
        }
    }
    std::vector<int> each_its_own(labels.size());
    std::iota(each_its_own.begin(), each_its_own.end(), 0);
    return LabelPlacing(labels, each_its_own, box, mm).place(count);
}

}  // namespace hemline
