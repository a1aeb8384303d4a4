// What the page mirrors of a screen in HTML elements, for screen readers and for tests.
#pragma once

#include <string>

#include "field/app/app.h"
#include "field/shell/stage.h"

namespace hemline {

/// JSON: {language, ground, title, saved, warning, waits, targets: [{name, label, chosen,
/// focused, x, y, w, h}], texts: [{words, x, y, w, h}]}, boxes in CSS pixels; waits: the main
/// action does, for words that are to be read first.
std::string mirror_of(const Stage& stage, const App& app, float density);

}  // namespace hemline
