// Words, tables and a drawing laid out on sheets of paper, as an HTML page. What goes on which
// sheet is decided here and not by the printer, so every sheet has its head, whatever browser
// prints it.
//
//      ┌──────────────────────────────────────────────┐
//      │ Edge A, piece 1 of 5 · Heron Lane            │   about · job
//      │                     4 May 2026 · page 1 of 2 │
//      ├──────────────────────────────────────────────┤
//      │ …                                            │
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "engine/handover/page_words.h"
#include "engine/handover/paper.h"

namespace hemline {

enum class ColumnLook { plain, strong, right };

struct Column {
    Text name;
    int wide_mm = 0;
    ColumnLook look = ColumnLook::plain;
};

/// Heights are computed for a wide font, so that a sheet does not overflow; it may end early.
class Sheets {
  public:
    /// `points`: height of the letters.
    Sheets(Paper paper, PaperHead head, Text about, int points, PageWords words = {});

    /// The largest words, so many points high; like a heading, on the same sheet as what follows.
    void title(const Text& words, int points);
    void heading(const Text& words);
    void paragraph(const Text& words);
    /// Words in small letters.
    void note(const Text& words);
    /// An SVG of that height.
    void drawing(std::string svg, int tall_mm);
    /// Begins a table; the column names are repeated on each sheet, unless all are empty.
    void table(std::vector<Column> columns);
    /// As many cells as the table has columns.
    void row(const std::vector<Text>& cells);

    /// The whole page; `style`: more CSS, for the drawing.
    [[nodiscard]] std::string html(std::string_view style = {}) const;
    [[nodiscard]] std::size_t count() const { return sheets().size(); }

  private:
    struct Block {
        std::string html;
        int tall = 0;                  ///< in hundredths of a millimeter
        bool stays_with_next = false;  ///< a heading
        int table = -1;                ///< a row of the table begun here
    };
    struct Table {
        std::string head;
        int head_tall = 0;
        std::vector<Column> columns;
    };
    [[nodiscard]] std::vector<std::string> sheets() const;
    [[nodiscard]] std::string head_of(std::size_t sheet, std::size_t count) const;
    [[nodiscard]] int tall_of(std::size_t block, bool table_goes_on) const;
    void words_block(const Text& words, std::string_view element, int points);
    [[nodiscard]] std::string table_begin(std::size_t table) const;
    [[nodiscard]] std::string table_style() const;

    Paper paper_;
    PaperHead head_;
    Text about_;
    int points_;
    PageWords words_;
    int title_points_ = 0;
    std::vector<Block> blocks_;
    std::vector<Table> tables_;
};

}  // namespace hemline
