// The card of the piece that a command line names.
#pragma once

#include <optional>

#include "engine/handover/paper.h"
#include "engine/work/card.h"
#include "tools/cli/desk.h"

namespace hemline {

struct AskedCard {
    Desk desk;
    Card card;
};

/// Plans the readings file and makes the card of EDGE and PIECE, of the trim asked for; says on
/// stderr why it could not.
std::optional<AskedCard> asked_card(const CardArguments& arguments, const Assets& assets);

/// What its sheets show at the top: the job, or the readings file, and today.
PaperHead paper_head(const Desk& desk, const CardArguments& arguments);

}  // namespace hemline
