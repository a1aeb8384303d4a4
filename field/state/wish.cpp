#include "field/state/wish.h"

namespace hemline {

Wish::Wish(const Wish&) = default;
Wish::Wish(Wish&&) noexcept = default;
Wish& Wish::operator=(const Wish&) = default;
Wish& Wish::operator=(Wish&&) noexcept = default;
Wish::~Wish() = default;

}  // namespace hemline
