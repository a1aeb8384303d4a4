// What the page mirrors of a screen in its own elements, for those who hear it and for tests.
#pragma once

#include <string>

#include "field/app/app.h"
#include "field/shell/stage.h"

namespace hemline {

/// JSON: {language, ground, title, saved, warning, targets: [{name, label, chosen, x, y, w, h}],
/// texts:
/// [{words, x, y, w, h}]}, boxes in CSS pixels.
std::string mirror_of(const Stage& stage, const App& app, float density);

}  // namespace hemline
