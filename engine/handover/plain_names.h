// Names on paper for things that events know by id, because who holds a sheet cannot look up an id.
#pragma once

#include <span>
#include <string>

#include "engine/handover/page_words.h"
#include "engine/record/fact_words.h"

namespace hemline {

/// Trims, steps and rules by their words, an offcut by the piece whose cut left it, an event by
/// what it said. `events` must outlive the names.
Names plain_names(std::span<const Event> events);

/// The same words, but an event's id inside a sentence ("picked 3f9c…-12 instead") is replaced by
/// `names.event`.
PageWords without_ids(const PageWords& words, const Names& names);

}  // namespace hemline
