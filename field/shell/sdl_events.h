// SDL's events in our words: touches, typed text, and whether there is anything new to see.
#pragma once

#include <string>

#include "field/touch/touch_queue.h"

union SDL_Event;

namespace hemline {

enum class Heard { nothing, something, resized, quit };

/// Puts touches (a mouse is one, by SDL's hint) into `queue` at their place in a drawable of w × h
/// pixels, and keys into `typed`: text as it is, Return "\n", Backspace "\b", Escape and Android's
/// back "\x1b", and those of keys.h. A pointer that only hovers is nothing.
Heard hear(const SDL_Event& event, float w, float h, TouchQueue& queue, std::string& typed);

}  // namespace hemline
