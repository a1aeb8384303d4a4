// Plans to choose from as text, to send from the worker that found them to the page.
#pragma once

#include <span>
#include <string>
#include <vector>

#include "engine/plan/plan.h"

namespace hemline {

std::string choices_text(std::span<const PlanChoice> choices);
/// Only for what choices_text() wrote.
std::vector<PlanChoice> choices_in(const std::string& text);

}  // namespace hemline
