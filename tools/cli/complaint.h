// What the user is told when input cannot be used: where, what is wrong, and what to do.
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

/// Says on stderr what is worth knowing but not a problem; nothing for an empty text.
void say_aside(const Text& words);

/// The same for the text of an argument: line 1, the column where reading stopped.
Exit complain(std::string_view argument, const Problem& problem);

}  // namespace hemline
