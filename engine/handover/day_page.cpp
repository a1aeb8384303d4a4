#include "engine/handover/day_page.h"

#include "engine/handover/plain_names.h"
#include "engine/handover/sheets.h"

namespace hemline {

std::string day_page(const DaySheet& sheet, const Text& day, Paper paper,
                     const std::function<std::string(WallTime)>& clock, const Names& names,
                     const PageWords& words) {
    Sheets sheets(paper, {sheet.job, day}, say("Day sheet"), 12, without_ids(words, names));
    sheets.title(say("Day sheet, {1}", day), 20);
    sheets.paragraph(Text(sheet.job));
    for (const DayPart& part : parts_of(sheet, names)) {
        sheets.heading(part.heading);
        sheets.table({{{}, 136}, {{}, 50, ColumnLook::right}});
        for (const DayLine& line : part.lines) {
            sheets.row(
                {line.words, Text(line.by.empty() ? "" : line.by + " " + clock(line.clock))});
        }
    }
    sheets.note(
        say("As the job's journal stands now: what was crossed out since is not here. The local "
            "code, the engineer and the maker's printed instructions decide, not this page."));
    sheets.paragraph(say("Foreman: {1}", "______________________________"));
    return sheets.html();
}

}  // namespace hemline
