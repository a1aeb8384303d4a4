// Lists of kinds of events. A family of kinds lists its own, so that a new kind is added where it
// stands; OneOf puts the families together.
#pragma once

#include <type_traits>
#include <variant>

namespace hemline {

template <class... Facts>
struct Kinds {};

/// A variant of all kinds of those lists.
template <class... Lists>
struct OneOf;
template <class... Facts>
struct OneOf<Kinds<Facts...>> {
    using Fact = std::variant<Facts...>;
};
template <class... Facts, class... More, class... Lists>
struct OneOf<Kinds<Facts...>, Kinds<More...>, Lists...>
    : OneOf<Kinds<Facts..., More...>, Lists...> {};

/// For a visitor's one answer for several kinds, each named: a kind that is not does not compile.
template <class Fact, class... Facts>
concept AnyOf = (std::is_same_v<Fact, Facts> || ...);

}  // namespace hemline
