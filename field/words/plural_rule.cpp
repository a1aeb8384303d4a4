#include "field/words/plural_rule.h"
#include "engine/words/result.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <optional>

namespace hemline {

namespace {

using Number = std::uint64_t;

constexpr int forms_most = 6;  // Arabic has as many, and no language more
constexpr std::size_t expression_most = 500;
constexpr int depth_most = 30;

struct Operator {
    std::string_view sign;
    int binds;  ///< how strongly; C's order
    Number (*of)(Number, Number);
};

// A longer sign comes before a shorter sign that it begins with.
constexpr std::array<Operator, 13> operators{{
    {"||", 1, [](Number a, Number b) -> Number { return a != 0 || b != 0; }},
    {"&&", 2, [](Number a, Number b) -> Number { return a != 0 && b != 0; }},
    {"==", 3, [](Number a, Number b) -> Number { return a == b; }},
    {"!=", 3, [](Number a, Number b) -> Number { return a != b; }},
    {"<=", 4, [](Number a, Number b) -> Number { return a <= b; }},
    {">=", 4, [](Number a, Number b) -> Number { return a >= b; }},
    {"<", 4, [](Number a, Number b) -> Number { return a < b; }},
    {">", 4, [](Number a, Number b) -> Number { return a > b; }},
    {"+", 5, [](Number a, Number b) { return a + b; }},
    {"-", 5, [](Number a, Number b) { return a - b; }},
    {"*", 6, [](Number a, Number b) { return a * b; }},
    // A correct rule never divides by zero; this way a wrong rule does no harm.
    {"/", 6, [](Number a, Number b) { return b == 0 ? 0 : a / b; }},
    {"%", 6, [](Number a, Number b) { return b == 0 ? 0 : a % b; }},
}};

/// Evaluates an expression while reading it. Both branches of a choice are always read, so that
/// whether it can be read does not depend on n.
class Reader {
  public:
    Reader(std::string_view expression, Number n) : rest_(expression), n_(n) {}

    std::optional<Number> whole() {
        const std::optional<Number> value = choice();
        return rest_.empty() ? value : std::nullopt;
    }

  private:
    bool take(std::string_view sign) {
        const bool there = rest_.substr(0, sign.size()) == sign;
        rest_.remove_prefix(there ? sign.size() : 0);
        return there;
    }

    std::optional<Number> choice() {
        if (++depth_ > depth_most) {
            return {};
        }
        std::optional<Number> value = joined(1);
        if (value && take("?")) {
            const std::optional<Number> yes = choice();
            const std::optional<Number> no = yes && take(":") ? choice() : std::nullopt;
            value = !no ? std::nullopt : *value != 0 ? yes : no;
        }
        --depth_;
        return value;
    }

    /// Operands joined by operators that bind at least as strongly.
    std::optional<Number> joined(int binds) {
        std::optional<Number> left = operand();
        while (left) {
            const auto* const found =
                std::find_if(operators.begin(), operators.end(), [this](const Operator& one) {
                    return rest_.substr(0, one.sign.size()) == one.sign;
                });
            if (found == operators.end() || found->binds < binds) {
                break;
            }
            take(found->sign);
            const std::optional<Number> right = joined(found->binds + 1);
            left = right ? std::optional(found->of(*left, *right)) : std::nullopt;
        }
        return left;
    }

    std::optional<Number> operand() {
        if (take("!")) {
            if (++depth_ > depth_most) {
                return {};
            }
            const std::optional<Number> value = operand();
            --depth_;
            return value ? std::optional<Number>(*value == 0) : std::nullopt;
        }
        if (take("(")) {
            const std::optional<Number> value = choice();
            return take(")") ? value : std::nullopt;
        }
        if (take("n")) {
            return n_;
        }
        Number value = 0;
        const char* const begin = rest_.data();
        const auto [end, error] = std::from_chars(begin, begin + rest_.size(), value);
        if (error != std::errc()) {
            return {};
        }
        rest_.remove_prefix(static_cast<std::size_t>(end - begin));
        return value;
    }

    std::string_view rest_;
    Number n_;
    int depth_ = 0;
};

}  // namespace

Result<PluralRule> PluralRule::read(std::string_view header) {
    std::string said(header);
    std::erase_if(said, [](char c) { return c == ' ' || c == '\t'; });
    constexpr std::string_view first = "nplurals=";
    constexpr std::string_view second = ";plural=";
    PluralRule rule;
    const std::size_t cut = said.find(second);
    if (said.rfind(first, 0) == 0 && cut != std::string::npos && said.back() == ';') {
        const std::string forms = said.substr(first.size(), cut - first.size());
        rule.forms_ = forms.size() == 1 ? forms[0] - '0' : 0;
        rule.expression_ = said.substr(cut + second.size());
        rule.expression_.pop_back();
        if (rule.forms_ >= 1 && rule.forms_ <= forms_most &&
            rule.expression_.size() <= expression_most && Reader(rule.expression_, 0).whole()) {
            return rule;
        }
    }
    return Problem{say("Plural-Forms of the phrases cannot be read: {1}", header),
                   say("Write it as \"nplurals=2; plural=(n != 1);\", with 1 to 6 forms.")};
}

int PluralRule::form_of(std::int64_t count) const {
    const Number n = count < 0 ? -static_cast<Number>(count) : static_cast<Number>(count);
    const Number form = Reader(expression_, n).whole().value_or(0);
    return form < static_cast<Number>(forms_) ? static_cast<int>(form) : 0;
}

}  // namespace hemline
