#include "field/update/deed.h"

namespace hemline {

Deed::Deed(const Deed&) = default;
Deed::Deed(Deed&&) noexcept = default;
Deed& Deed::operator=(const Deed&) = default;
Deed& Deed::operator=(Deed&&) noexcept = default;
Deed::~Deed() = default;

}  // namespace hemline
