#include "tools/cli/complaint.h"

#include <iostream>

#include "engine/words/result.h"
#include "engine/words/shown_text.h"

namespace hemline {

Exit complain(std::string_view source, int line, int column, std::string_view what,
              std::string_view mend) {
    std::cerr << shown_text(source) << ':' << line << ':' << column << ": " << shown_text(what)
              << '\n';
    if (!mend.empty()) {
        std::cerr << shown_text(mend) << '\n';
    }
    return Exit::problem_in_input;
}

Exit complain(std::string_view source, int line, int column, const Problem& problem) {
    return complain(source, line, column, problem.what.english(), problem.mend.english());
}

Exit complain(std::string_view source, const TableProblem& problem) {
    return complain(source, problem.line, problem.column, problem.what, problem.mend);
}

void say_aside(const Text& words) {
    if (!words.empty()) {
        std::cerr << words.english() << '\n';
    }
}

Exit complain(std::string_view argument, const Problem& problem) {
    return complain(argument, 1, problem.at < 0 ? 1 : problem.at + 1, problem);
}

}  // namespace hemline
