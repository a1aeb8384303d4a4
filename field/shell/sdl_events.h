// Turns SDL's events into ours: touches, typed text, and whether there is anything new to see.
#pragma once

#include <string>

#include "field/touch/touch_queue.h"

union SDL_Event;

namespace hemline {

enum class Heard { nothing, something, resized, quit };

/// Puts touches (also those of a mouse, by SDL's hint) into `queue` at their place in a drawable of
/// w × h pixels, and keys into `typed`: text as it is, Backspace "\b", and those of keys.h, of
/// which Android's back is Escape. A pointer that only hovers is ignored.
Heard hear(const SDL_Event& event, float w, float h, TouchQueue& queue, std::string& typed);
/// Ctrl+V.
bool is_paste(const SDL_Event& event);

}  // namespace hemline
