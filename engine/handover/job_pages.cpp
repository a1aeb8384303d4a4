#include "engine/handover/job_pages.h"

#include <array>
#include <cstdio>

#include "engine/csv_row.h"
#include "engine/handover/svg.h"
#include "engine/measure/length_text.h"

namespace hemline {
namespace {

std::string cell(std::string_view text) { return "<td>" + xml_text(text) + "</td>"; }

std::string table_head(std::initializer_list<const char*> names) {
    std::string html = "<table><tr>";
    for (const char* name : names) {
        html += std::string("<th>") + name + "</th>";
    }
    return html + "</tr>\n";
}

std::string edges_html(const Job& job) {
    std::string html = table_head({"edge", "kind", "agreed length", "pieces cut", "finished"});
    for (const EdgeWork& work : job.edges) {
        const auto length = work.length(job.practice);
        std::string cuts;
        for (const CutPiece& cut : work.cut) {
            cuts += (cuts.empty() ? "" : ", ") + std::to_string(cut.piece) + ": " +
                    print_length(cut.cut);
        }
        html +=
            "<tr>" + cell(work.edge.id) + cell(spoken(work.edge.kind).english()) +
            cell(length && work.undecided.empty() ? print_length(*length) : "none") + cell(cuts) +
            cell(work.finished ? print_minute(work.finished_when) + " UTC by " + work.finished_by
                               : "") +
            "</tr>\n";
    }
    return html + "</table>\n";
}

std::string readings_html(const Job& job) {
    std::string html = table_head({"edge", "of", "length", "by", "tablet", "time (UTC)", ""});
    for (const EdgeWork& work : job.edges) {
        for (const RecordedReading& reading : work.readings) {
            html += "<tr>" + cell(work.edge.id) +
                    cell(reading.of == ReadingOf::edge ? "edge" : "remainder") +
                    cell(print_length(reading.length)) + cell(reading.by) +
                    cell(print_device(reading.id.device)) + cell(print_minute(reading.when)) +
                    cell(reading.struck ? "struck" : "") + "</tr>\n";
        }
    }
    return html + "</table>\n";
}

std::string conflicts_html(const Job& job) {
    std::string html;
    for (const Conflict& conflict : job.conflicts) {
        html += "<li>" + xml_text(conflict.what().english()) + " (";
        for (const EventId id : conflict.sides) {
            html += (html.back() == '(' ? "" : ", ") + print_event_id(id);
        }
        html += ")</li>\n";
    }
    return html.empty() ? "" : "<h2>Made apart, not decided</h2>\n<ul>\n" + html + "</ul>\n";
}

std::string events_html(std::span<const Event> events) {
    std::string html = table_head({"event", "time (UTC)", "by", "what"});
    for (const Event& event : events) {
        html += "<tr>" + cell(print_event_id(event.id)) + cell(print_minute(event.when)) +
                cell(event.by) + cell(describe(event.fact).english()) + "</tr>\n";
    }
    return html + "</table>\n";
}

std::string readings_csv(const Job& job) {
    std::string csv =
        csv_row({"edge", "of", "length", "length_nm", "by", "device", "time", "struck"});
    for (const EdgeWork& work : job.edges) {
        for (const RecordedReading& reading : work.readings) {
            csv += csv_row({work.edge.id, reading.of == ReadingOf::edge ? "edge" : "remainder",
                            print_length(reading.length), reading.length.nm(), reading.by,
                            print_device(reading.id.device), print_minute(reading.when),
                            reading.struck ? "yes" : "no"});
        }
    }
    return csv;
}

std::string events_csv(std::span<const Event> events) {
    std::string csv = csv_row({"event", "time", "by", "what", "supersedes"});
    for (const Event& event : events) {
        std::string seen;
        for (const EventId id : event.supersedes) {
            seen += (seen.empty() ? "" : " ") + print_event_id(id);
        }
        csv += csv_row({print_event_id(event.id), print_minute(event.when), event.by,
                        describe(event.fact), seen});
    }
    return csv;
}

}  // namespace

std::string print_minute(HybridTime when) {
    // Days since 1 March 0000 in eras of 400 years (146 097 days) of Gregorian years that begin in
    // March, so that the leap day is a year's last: from memory, common practice.
    constexpr std::int64_t day_ms = 86'400'000;
    const std::int64_t day = when.wall_ms / day_ms + 719'468;
    const std::int64_t era = day / 146'097, of_era = day % 146'097;
    const std::int64_t year_of_era =
        (of_era - of_era / 1'460 + of_era / 36'524 - of_era / 146'096) / 365;
    const std::int64_t of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    const std::int64_t march_month = (5 * of_year + 2) / 153;
    const std::int64_t day_of_month = of_year - (153 * march_month + 2) / 5 + 1;
    const std::int64_t month = march_month < 10 ? march_month + 3 : march_month - 9;
    const std::int64_t year = era * 400 + year_of_era + (month <= 2 ? 1 : 0);
    const std::int64_t minute = when.wall_ms % day_ms / 60'000;
    std::array<char, 80> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02d-%02d %02d:%02d", static_cast<int>(year),
                  static_cast<int>(month), static_cast<int>(day_of_month),
                  static_cast<int>(minute / 60), static_cast<int>(minute % 60));
    return text.data();
}

std::map<std::string, std::string> pages_of(std::span<const Event> events,
                                            const Practice& practice) {
    const Job job = replay(events, practice);
    const std::string html =
        "<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>" +
        xml_text(job.name) +
        "</"
        "title><style>body{font-family:sans-serif}table{border-collapse:collapse}td,th{border:1px "
        "solid #999;padding:2px 6px;text-align:left}</style></head><body>\n<h1>" +
        xml_text(job.name) + "</h1>\n" + conflicts_html(job) + "<h2>Edges</h2>\n" +
        edges_html(job) + "<h2>Readings</h2>\n" + readings_html(job) +
        "<h2>Everything that happened</h2>\n" + events_html(events) +
        "<p>Read from the job's journals, which are in this file. The local code, the engineer and "
        "the maker's printed instructions decide, not this page.</p>\n</body></html>\n";
    return {{"job.html", html},
            {"readings.csv", readings_csv(job)},
            {"events.csv", events_csv(events)}};
}

}  // namespace hemline
