#include "field/update/update.h"

#include "field/update/turn.h"

namespace hemline {

namespace {

/// What is written is signed: nobody else's name may stand on it.
bool writes(const Wish& wish) {
    return std::holds_alternative<Keep>(wish) || std::holds_alternative<UndoLast>(wish) ||
           std::holds_alternative<PickSide>(wish) || std::holds_alternative<StartJob>(wish) ||
           std::holds_alternative<StartDemo>(wish);
}

void on(Turn turn, const Wish& wish) {
    if (writes(wish) && turn.state.by.empty()) {
        ask_who(turn);
    } else {
        std::visit([turn](const auto& one) { on(turn, one); }, wish);
    }
}

void on(Turn turn, const news::Told& told) { tell(turn, told.words); }
void on(Turn turn, const news::Added& added) { tell_more(turn, added.words); }

}  // namespace

Updated update(Session session, const News& what) {
    Updated now{std::move(session), {}};
    const Turn turn{now.session, now.session.state, now.deeds};
    std::visit([turn](const auto& one) { on(turn, one); }, what);
    return now;
}

}  // namespace hemline
