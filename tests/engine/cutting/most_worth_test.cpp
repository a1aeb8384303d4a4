// The filling worth most, against a table of every room: the test's own knapsack.
#include "engine/cutting/most_worth.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "engine/cutting/effort.h"

using namespace hemline;

namespace {

/// The most worth that fits each room, piece after piece.
std::vector<std::int64_t> worth_by_room(const CuttingTask& task,
                                        const std::vector<std::int64_t>& worth,
                                        std::int64_t room_most) {
    std::vector<std::int64_t> best(static_cast<std::size_t>(room_most) + 1, 0);
    for (std::size_t i = 0; i < task.pieces.size(); ++i) {
        for (std::int64_t n = 0; n < task.pieces[i].count; ++n) {
            const auto size = static_cast<std::size_t>(task.pieces[i].size);
            for (std::size_t room = best.size(); room-- > size;) {
                best[room] = std::max(best[room], best[room - size] + worth[i]);
            }
        }
    }
    return best;
}

}  // namespace

TEST_CASE("A stick filled to its end is worth what a table of every room says, either way") {
    // Every piece worth its size and as much again for being one: hard to tell apart by rate. The
    // room is one that the best filling uses up, so a filling a hair shorter is worth less.
    std::mt19937 random(9);
    int room_by_room = 0;
    for (int round = 0; round < 20; ++round) {
        CuttingTask task;
        std::vector<std::int64_t> worth, counts;
        for (int i = 0; i < 30; ++i) {
            task.pieces.push_back({500 + static_cast<std::int64_t>(random() % 1000), 0, {}});
        }
        std::sort(task.pieces.begin(), task.pieces.end(),
                  [](const TaskPiece& a, const TaskPiece& b) { return a.size > b.size; });
        for (TaskPiece& piece : task.pieces) {
            piece.count = 1 + static_cast<std::int64_t>(random() % 3);
            worth.push_back(piece.size + 300);
            counts.push_back(piece.count);
        }
        const std::vector<std::int64_t> table = worth_by_room(task, worth, 12'000);
        std::size_t room = table.size() - 1;
        while (table[room - 1] == table[room]) {
            --room;
        }
        const CuttingEffort given{100'000'000, {}};
        Effort effort(given);
        const MostWorth found =
            most_worth(task, worth, counts, static_cast<std::int64_t>(room), effort);
        CAPTURE(round);
        CHECK(found.worth == table[room]);
        CHECK(found.most == table[room]);
        std::int64_t size = 0, sum = 0;
        for (const Filling::Part& part : found.parts) {
            CHECK(part.count <= counts[part.piece]);
            size += part.count * task.pieces[part.piece].size;
            sum += part.count * worth[part.piece];
        }
        CHECK(size == static_cast<std::int64_t>(room));
        CHECK(sum == found.worth);
        // Past the 20 000 steps of looking depth first, it goes room by room.
        room_by_room += given.steps - effort.left() > 20'000 ? 1 : 0;
    }
    MESSAGE(room_by_room << " of 20 room by room");
    CHECK(room_by_room > 0);
    CHECK(room_by_room < 20);
}
