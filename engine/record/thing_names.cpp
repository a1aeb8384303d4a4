#include "engine/record/fact_words.h"

namespace hemline {

ThingNames thing_names(const Names& names) {
    ThingNames things;
    if (names.step) {
        things.step = [step = names.step](const Thing& thing) {
            StepSaid said;
            said.edge = thing.name;
            said.step = thing.step;
            said.piece = thing.piece;
            return step(said);
        };
    }
    things.trim = names.trim;
    return things;
}

}  // namespace hemline
