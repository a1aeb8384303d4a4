// One question about an edge, with the answers to touch: "What stands at its foot?"
#pragma once

#include <string>
#include <vector>

#include "engine/work/edge_change.h"
#include "field/touch/ui.h"

namespace hemline {

/// What is asked, in whole words: of a sloped edge by its foot and top.
Text question_of(EdgeField field, const Edge& edge);
/// What the answer is called in a list, and the answer that stands: "Left end", "gable".
Text name_of(EdgeField field, const Edge& edge);
Text answer_of(EdgeField field, const Edge& edge, const Catalogue& catalogue);

/// Whether it is answered by keys: a name, an angle, a pitch.
bool is_keyed(EdgeField field);

/// One answer to touch, its target's name, and the edge with it.
struct EdgeAnswer {
    std::string target;
    Text words;
    Edge edge;
};
std::vector<EdgeAnswer> answers_to(EdgeField field, const Edge& edge, const Catalogue& catalogue);

/// The answers in a list that scrolls, in one column the fewer where their words are long; the one
/// touched, else null.
const EdgeAnswer* draw_edge_answers(Ui& ui, const std::vector<EdgeAnswer>& answers,
                                    const Text& stands, bool long_words, Box body);

}  // namespace hemline
