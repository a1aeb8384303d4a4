#include "field/screens/rules/rule_meaning.h"

#include <algorithm>

namespace hemline {

float draw_rule_meaning(Ui& ui, const State& state, const std::string& key, Box box) {
    const auto& rules = state.assets->rules;
    const auto rule = std::find_if(rules.begin(), rules.end(),
                                   [&](const PracticeRule& one) { return one.key == key; });
    if (rule == rules.end()) {
        return 0;
    }
    float y = box.y + ui.paragraph(box.x, box.y, box.w, say(rule->meaning)) + ui.mm(1);
    y += ui.paragraph(
        box.x, y, box.w,
        say("Usual: {1} ({2}). Local code and the maker's instructions go first.",
            rule->value.empty() ? say("not said") : Text(rule->value), say(rule->source)),
        Size::small, ui.colours().soft);
    return y - box.y;
}

int field_of(Length length) { return length < inches(1) ? 2 : length < feet(1) ? 1 : 0; }

}  // namespace hemline
