// Any text as a table and as a readings file: every problem has a place and words, and every cell
// can be written for a spreadsheet and read back.
#include <cstdlib>
#include <string_view>

#include "engine/trim/practice.h"
#include "engine/words/csv.h"
#include "engine/words/csv_row.h"
#include "engine/words/shown_text.h"
#include "engine/work/procedure.h"

using namespace hemline;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(bytes), size);
    const auto read = read_table(text);
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        if (problem->what.empty() || problem->line < 0 || problem->column < 0) {
            std::abort();
        }
    } else {
        const Table& table = std::get<Table>(read);
        for (const auto& row : table.rows) {
            if (row.size() != table.header.size()) {
                std::abort();
            }
            for (const Cell& cell : row) {
                const std::string written = cell_of(cell.text);
                if (!is_plain(written) || text_of_cell(written) != cell.text) {
                    std::abort();
                }
            }
        }
    }
    read_practice_rules(text).ok();
    read_procedure(text).ok();
    return 0;
}
