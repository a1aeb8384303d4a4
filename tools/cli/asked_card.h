// The card of the piece that a command line names.
#pragma once

#include <optional>

#include "engine/work/card.h"
#include "tools/cli/desk.h"

namespace hemline {

struct AskedCard {
    Desk desk;
    Card card;
};

/// Plans the readings file and makes the card of EDGE and PIECE, of the trim asked for; says on
/// stderr what kept it from doing so.
std::optional<AskedCard> asked_card(const CardArguments& arguments, const Assets& assets);

}  // namespace hemline
