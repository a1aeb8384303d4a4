// A value, or a Problem: in the fitter's words, with what to do about it.
#pragma once

#include <utility>
#include <variant>

#include "engine/require.h"
#include "engine/words/text.h"

namespace hemline {

/// What is wrong in the world outside the program, and what to do about it.
struct Problem {
    Text what;    ///< a sentence: what is wrong
    Text mend;    ///< a sentence: what to do about it
    int at = -1;  ///< byte offset in the text that was read; -1 where there is no text

    bool operator==(const Problem&) const = default;
};

/// What is wrong, and what to do.
template <class WithMend>
Text said(const WithMend& problem) {
    return joined({problem.what, problem.mend}, " ");
}

/// Holds a T or the Problem that kept it from being made.
template <class T>
class [[nodiscard]] Result {
  public:
    Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}
    Result(Problem problem) : held_(std::in_place_index<1>, std::move(problem)) {}

    [[nodiscard]] bool ok() const { return held_.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// The value; stops the program when there is none (ask ok() first).
    [[nodiscard]] const T& value() const {
        require(ok(), "Result::value() on a problem");
        return *std::get_if<0>(&held_);
    }
    [[nodiscard]] const T& operator*() const { return value(); }
    [[nodiscard]] const T* operator->() const { return &value(); }

    /// The problem; stops the program when there is none.
    [[nodiscard]] const Problem& problem() const {
        require(!ok(), "Result::problem() on a value");
        return *std::get_if<1>(&held_);
    }

  private:
    std::variant<T, Problem> held_;
};

}  // namespace hemline
