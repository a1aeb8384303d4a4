// A job as pages that any browser and any spreadsheet opens: what a job file carries for people.
#pragma once

#include <map>
#include <optional>
#include <span>
#include <string>

#include "engine/handover/page_words.h"
#include "engine/record/job.h"

namespace hemline {

struct Event;

/// "job.html" (edges, readings, cuts, sign-offs, where tablets disagree, and every event),
/// "readings.csv" and "events.csv" (RFC 4180, UTF-8). `events` are in_order(); times are UTC.
/// `practice`: the defaults the job starts from. `words`: the page's language and tape marks;
/// without them English, on the job's marks. The tables are data, and stay English.
std::map<std::string, std::string> pages_of(std::span<const Event> events, const Practice& practice,
                                            const std::optional<PageWords>& words = {});

/// UTC to the minute, "2026-05-04 13:20", in the proleptic Gregorian calendar.
std::string print_minute(WallTime time);

}  // namespace hemline
