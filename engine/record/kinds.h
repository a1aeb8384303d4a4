// Lists of kinds of events. Each family of kinds has its list, so that a new kind is added beside
// its struct; OneOf joins the families.
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

/// Lets a visitor give several named kinds the same answer: a kind that nobody named does not
/// compile.
template <class Fact, class... Facts>
concept AnyOf = (std::is_same_v<Fact, Facts> || ...);

}  // namespace hemline
