// What paper calls the things that events know by their ids: nobody who holds a sheet can look one
// up.
#pragma once

#include <span>
#include <string>

#include "engine/handover/page_words.h"
#include "engine/record/fact_words.h"

namespace hemline {

/// Trims, steps and rules by their words, an offcut by the piece whose cut left it, an event by
/// what it said. The names look into `events`, which outlive them.
Names plain_names(std::span<const Event> events);

/// The same words, but an event's id that stands in a sentence ("picked 3f9c…-12 instead") is said
/// by `names.event`.
PageWords without_ids(const PageWords& words, const Names& names);

}  // namespace hemline
