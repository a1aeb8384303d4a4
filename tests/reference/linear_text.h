// Writing an integer program in CPLEX's LP format, a few terms a line as every reader takes it.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

namespace reference {

/// Σ factor · variable, variables by number.
using Terms = std::vector<std::pair<std::int64_t, int>>;

inline std::string text_of(const Terms& terms) {
    std::string text;
    for (std::size_t i = 0; i < terms.size(); ++i) {
        const auto& [factor, variable] = terms[i];
        text += (factor < 0 ? " - " : " + ") + std::to_string(factor < 0 ? -factor : factor) +
                " x" + std::to_string(variable) + (i % 8 == 7 ? "\n" : "");
    }
    return text;
}

/// One program: the least of `cost`, all variables whole and at least 0.
struct Program {
    Terms cost;
    std::string rows;
    int variables = 0;
    std::int64_t entries = 0;

    /// `sense`: "<=", ">=" or "=". A row without terms says nothing and is left out.
    void add_row(const Terms& terms, const char* sense, std::int64_t right) {
        if (!terms.empty()) {
            rows += text_of(terms) + ' ' + sense + ' ' + std::to_string(right) + '\n';
            entries += static_cast<std::int64_t>(terms.size());
        }
    }
    [[nodiscard]] std::string text() const {
        std::string all =
            "Minimize\n sticks:" + text_of(cost) + "\nSubject To\n" + rows + "General\n";
        for (int i = 0; i < variables; ++i) {
            all += " x" + std::to_string(i) + (i % 16 == 15 ? "\n" : "");
        }
        return all + "\nEnd\n";
    }
};

}  // namespace reference
