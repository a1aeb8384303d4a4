// What the desk hears when its input cannot be used: where it stands, what is wrong, and the mend.
//
//   roof.csv:3:14: "5 inches" is no end of an edge.
//   Write one of: gable, corner_out, corner_in, wall, open.
#pragma once

#include <string_view>

#include "engine/words/csv.h"
#include "engine/words/result.h"

namespace hemline {

/// How the program ends.
enum class Exit { fine = 0, problem_in_input = 1, wrong_usage = 2 };

/// Says on stderr what is wrong at `line` and `column` (1…, 0 where the whole is meant) of
/// `source`.
Exit complain(std::string_view source, int line, int column, std::string_view what,
              std::string_view mend);
Exit complain(std::string_view source, int line, int column, const Problem& problem);
Exit complain(std::string_view source, const TableProblem& problem);

/// Says on stderr what is no problem, and still to be known; nothing of an empty text.
void say_aside(const Text& words);

/// The same for the text of one argument: line 1, the column where reading stopped.
Exit complain(std::string_view argument, const Problem& problem);

}  // namespace hemline
