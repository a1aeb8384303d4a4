#include "engine/panels/most_weight_matching.h"

#include "engine/panels/blossoms.h"

namespace hemline {

std::vector<std::optional<std::size_t>> most_weight_matching(std::size_t count,
                                                             std::span<const Match> matches) {
    Blossoms blossoms(count, matches);
    while (blossoms.make_one_more()) {
    }
    std::vector<std::optional<std::size_t>> mates(count);
    for (std::size_t one = 0; one < count; ++one) {
        if (const std::size_t mate = blossoms.mate(one + 1); mate != 0) {
            mates[one] = mate - 1;
        }
    }
    return mates;
}

}  // namespace hemline
