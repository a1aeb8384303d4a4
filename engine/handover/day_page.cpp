#include "engine/handover/day_page.h"

#include "engine/handover/svg.h"

namespace hemline {

namespace {

std::string row_of(const DayLine& line, const std::function<std::string(WallTime)>& clock,
                   const PageWords& words) {
    const std::string who = line.by.empty() ? "" : line.by + " " + clock(line.clock);
    return "<tr><td>" + xml_text(words.in_words(line.words)) + "</td><td class=\"who\">" +
           xml_text(who) + "</td></tr>\n";
}

}  // namespace

std::string day_page(const DaySheet& sheet, const Text& day, Paper paper,
                     const std::function<std::string(WallTime)>& clock, const Names& names,
                     const PageWords& words) {
    const auto written = [&](const Text& text) { return xml_text(words.in_words(text)); };
    const std::string title = written(say("Day sheet, {1}", day));
    std::string html =
        "<!DOCTYPE html>\n<html lang=\"" + words.language +
        "\"><head><meta charset=\"utf-8\"/><title>" + xml_text(sheet.job) + ": " + title +
        "</title>\n<style>@page{size:" + (paper == Paper::letter ? "letter" : "A4") +
        ";margin:12mm}body{margin:0;font:12pt sans-serif}h1{font-size:20pt;margin:0 0 1mm}"
        "h2{font-size:14pt;margin:4mm 0 1mm}p{margin:0 0 2mm}table{border-collapse:collapse;"
        "width:100%}td{padding:1mm 4mm 1mm 0;border-bottom:0.2mm solid #777}"
        ".who{text-align:right;white-space:nowrap}tr{break-inside:avoid}</style></head><body>\n";
    html += "<h1>" + title + "</h1>\n<p>" + xml_text(sheet.job) + "</p>\n";
    for (const DayPart& part : parts_of(sheet, names)) {
        html += "<h2>" + written(part.heading) + "</h2>\n<table>\n";
        for (const DayLine& line : part.lines) {
            html += row_of(line, clock, words);
        }
        html += "</table>\n";
    }
    return html + "<p>" +
           written(say("As the job's journal stands now: what was struck since is not here. The "
                       "local code, the engineer and the maker's printed instructions decide, not "
                       "this page.")) +
           "</p>\n<p>" + written(say("Foreman: {1}", "______________________________")) +
           "</p>\n</body></html>\n";
}

}  // namespace hemline
