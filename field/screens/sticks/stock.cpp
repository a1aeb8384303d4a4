// The lengths of new sticks, a touch each; and whether new sticks can be had today.
#include <algorithm>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

/// Common lengths of the trade, no published source.
constexpr std::int64_t lengths_ft[] = {8, 10, 12, 14, 16, 20};

std::vector<Length> lengths_now(const Job& job) {
    std::vector<Length> lengths = job.stock_shorter;
    lengths.insert(lengths.begin(), job.practice.stock);
    return lengths;
}

void draw_lengths(Ui& ui, const State& state, const PoolView& pool, Box& body, Wished& wish) {
    const std::vector<Length> now = lengths_now(state.job);
    const int wide = ui.portrait() ? 2 : 3;
    const int tall = static_cast<int>(std::size(lengths_ft)) / wide;
    const float gap = ui.mm(3), height = ui.mm(12);
    const std::vector<Box> lines =
        rows(take_top(body, static_cast<float>(tall) * (height + gap) - gap), tall, gap);
    for (std::size_t i = 0; i < std::size(lengths_ft); ++i) {
        const Length length = feet(lengths_ft[i]);
        const auto per_line = static_cast<std::size_t>(wide);
        const std::vector<Box> places = columns(lines[i / per_line], wide, gap);
        const bool chosen = std::count(now.begin(), now.end(), length) > 0;
        const std::string words = std::to_string(lengths_ft[i]) + " ft";
        if (!ui.button("stock " + words, Text(words), places[i % per_line],
                       chosen ? Look::chosen : Look::plain)) {
            continue;
        }
        std::vector<Length> lengths = now;
        if (chosen) {
            lengths.erase(std::remove(lengths.begin(), lengths.end(), length), lengths.end());
        } else {
            lengths.push_back(length);
        }
        if (!lengths.empty()) {  // at least one length must stay
            wish = Keep{StockChosen{lengths}, at_pool(Screen::stock, pool)};
        }
    }
}

}  // namespace

Wished draw_stock(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const std::optional<PoolView> pool = pool_at(state);
    if (!pool) {
        return Go{{Screen::roof, {}}};
    }
    const Frame frame =
        open_frame(ui, state, say("New sticks · which lengths can you get?"),
                   {{"leave", say("Roof")}, {"done", say("The sticks"), Look::primary}});
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("stock", frame.body);
    const float top = body.y;
    draw_lengths(ui, state, *pool, body, wish);
    take_top(body, ui.mm(3));
    Text lengths;
    for (const Length length : lengths_now(state.job)) {
        lengths = lengths.empty() ? Text(length) : say("{1} or {2}", lengths, length);
    }
    take_top(body,
             ui.paragraph(body.x, body.y, body.w,
                          say("Now: {1}. Edges are divided by the longest; the last one cannot "
                              "be taken away.",
                              lengths)));
    ui.end_scroll(body.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "done") {
        wish = Go{at_pool(Screen::sticks, *pool)};
    }
    return wish;
}

}  // namespace hemline
