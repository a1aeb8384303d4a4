#include "engine/handover/sheets.h"

#include <algorithm>

#include "engine/handover/paper_words.h"
#include "engine/handover/svg.h"
#include "engine/require.h"

namespace hemline {

namespace {

constexpr int wide_mm = 186;  // A4 between its margins: the narrower of A4 and Letter
constexpr int heading_more = 2, note_points = 9;
constexpr int padding_mm = 3;             // of a cell
constexpr std::size_t lines_in_row = 30;  // more goes into another row
constexpr std::size_t about_letters = 70, job_letters = 50;
constexpr int space_after = 250, row_space = 160;

/// Height between the margins in hundredths of a millimeter, without the head and with 4 mm to
/// spare.
int room_on(Paper paper) { return ((paper == Paper::letter ? 279 : 297) - 24 - 14 - 4) * 100; }

enum class Weight { plain, bold };

/// How many letters fit on a line: on average a letter is 0.50 of its height wide, a bold letter
/// 0.55; over the words of a card the widest common plain font has 0.48 and 0.55. A point is 0.353
/// mm.
std::size_t letters_on(int line_mm, int points, Weight weight) {
    const int letter_um = points * (weight == Weight::plain ? 177 : 194);
    return static_cast<std::size_t>(std::max(4, line_mm * 1000 / letter_um));
}

/// In hundredths of a millimeter; the distance of lines is 1.25 times the height of their letters.
int lines_tall(std::size_t lines, int points) {
    return static_cast<int>(lines) * points * 4411 / 100;
}

std::string lines_from(const std::vector<std::string>& lines, std::size_t from) {
    std::string part;
    for (std::size_t i = from; i < std::min(lines.size(), from + lines_in_row); ++i) {
        part += (part.empty() ? "" : " ") + lines[i];
    }
    return part;
}

std::string_view cell_of(ColumnLook look) {
    switch (look) {
        case ColumnLook::plain:
            break;
        case ColumnLook::strong:
            return "<td class=\"strong\">";
        case ColumnLook::right:
            return "<td class=\"right\">";
    }
    return "<td>";
}

std::size_t letters_in_column(const Column& column, int points) {
    return letters_on(column.wide_mm - padding_mm, points,
                      column.look == ColumnLook::strong ? Weight::bold : Weight::plain);
}

}  // namespace

Sheets::Sheets(Paper paper, PaperHead head, Text about, int points, PageWords words)
    : paper_(paper),
      head_(std::move(head)),
      about_(std::move(about)),
      points_(points),
      words_(std::move(words)) {}

void Sheets::words_block(const Text& words, std::string_view element, int points) {
    const std::string text = words_.in_words(words);
    const bool heads = element.front() == 'h';
    const auto lines =
        wrapped(text, letters_on(wide_mm, points, heads ? Weight::bold : Weight::plain));
    for (std::size_t from = 0; !text.empty() && from < lines.size(); from += lines_in_row) {
        const std::string begin(element), name = begin.substr(0, begin.find(' '));
        const int tall = lines_tall(std::min(lines.size() - from, lines_in_row), points);
        blocks_.push_back(
            {"<" + begin + ">" + paper_text(lines_from(lines, from)) + "</" + name + ">\n",
             tall + space_after * (heads ? 2 : 1), heads, -1});
    }
}

void Sheets::title(const Text& words, int points) {
    title_points_ = points;
    words_block(words, "h1", points);
}

void Sheets::heading(const Text& words) { words_block(words, "h2", points_ + heading_more); }

void Sheets::paragraph(const Text& words) { words_block(words, "p", points_); }

void Sheets::note(const Text& words) { words_block(words, "p class=\"note\"", note_points); }

void Sheets::drawing(std::string svg, int tall_mm) {
    blocks_.push_back({std::move(svg), tall_mm * 100 + space_after, false, -1});
}

void Sheets::table(std::vector<Column> columns) {
    Table table;
    std::size_t lines = 0;
    for (const Column& column : columns) {
        const std::string name = words_.in_words(column.name);
        table.head += "<th>" + paper_text(name) + "</th>";
        if (!name.empty()) {
            const auto letters = letters_on(column.wide_mm - padding_mm, points_, Weight::bold);
            lines = std::max(lines, wrapped(name, letters).size());
        }
    }
    table.head = lines == 0 ? "" : "<tr>" + table.head + "</tr>\n";
    table.head_tall = lines == 0 ? 0 : lines_tall(lines, points_) + row_space;
    table.columns = std::move(columns);
    tables_.push_back(std::move(table));
}

void Sheets::row(const std::vector<Text>& cells) {
    require(!tables_.empty() && cells.size() == tables_.back().columns.size(), "a cell a column");
    const std::vector<Column>& columns = tables_.back().columns;
    std::vector<std::vector<std::string>> lines;
    std::size_t most = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        lines.push_back(wrapped(words_.in_words(cells[i]), letters_in_column(columns[i], points_)));
        most = std::max(most, lines.back().size());
    }
    for (std::size_t from = 0; from < most; from += lines_in_row) {
        std::string html = "<tr>";
        for (std::size_t i = 0; i < cells.size(); ++i) {
            html.append(cell_of(columns[i].look)) +=
                paper_text(lines_from(lines[i], from)) + "</td>";
        }
        const int tall = lines_tall(std::min(most - from, lines_in_row), points_) + row_space;
        blocks_.push_back({html + "</tr>\n", tall, false, static_cast<int>(tables_.size()) - 1});
    }
}

/// Height of a block, with its table's head where the table begins on the sheet.
int Sheets::tall_of(std::size_t block, bool table_goes_on) const {
    const Block& it = blocks_[block];
    const bool heads = it.table >= 0 && !table_goes_on;
    return it.tall + (heads ? tables_[static_cast<std::size_t>(it.table)].head_tall : 0);
}

std::vector<std::string> Sheets::sheets() const {
    std::vector<std::string> done(1);
    int left = room_on(paper_);
    int open = -1;  // the table that continues
    const auto close_table = [&] {
        done.back() += open >= 0 ? "</table>\n" : "";
        open = -1;
    };
    for (std::size_t i = 0; i < blocks_.size(); ++i) {
        const Block& block = blocks_[i];
        int wanted = tall_of(i, block.table == open && open >= 0);
        for (std::size_t next = i; next + 1 < blocks_.size() && blocks_[next].stays_with_next;
             ++next) {
            wanted += tall_of(next + 1, false);
        }
        if (wanted > left && left < room_on(paper_)) {
            close_table();
            done.emplace_back();
            left = room_on(paper_);
        }
        left -= tall_of(i, block.table == open && open >= 0);
        if (block.table != open) {
            close_table();
        }
        if (block.table >= 0 && open < 0) {
            open = block.table;
            done.back() += table_begin(static_cast<std::size_t>(open));
        }
        done.back() += block.html;
    }
    close_table();
    return done;
}

std::string Sheets::table_begin(std::size_t table) const {
    std::string html = "<table class=\"t" + std::to_string(table) + "\"><colgroup>";
    for (std::size_t i = 0; i < tables_[table].columns.size(); ++i) {
        html += "<col/>";
    }
    return html + "</colgroup>\n" + tables_[table].head;
}

std::string Sheets::table_style() const {
    std::string style;
    for (std::size_t table = 0; table < tables_.size(); ++table) {
        const std::vector<Column>& columns = tables_[table].columns;
        for (std::size_t i = 0; i < columns.size(); ++i) {
            style += ".t" + std::to_string(table) + " col:nth-child(" + std::to_string(i + 1) +
                     "){width:" + std::to_string(columns[i].wide_mm) + "mm}";
        }
    }
    return style;
}

std::string Sheets::head_of(std::size_t sheet, std::size_t count) const {
    const std::string about = shortened(words_.in_words(about_), about_letters);
    const std::string job = shortened(head_.job, job_letters);
    const std::string day = words_.in_words(head_.day);
    const auto beside = [](const std::string& a, const std::string& b) {
        return a + (a.empty() || b.empty() ? "" : " · ") + b;
    };
    return "<header><p>" + paper_text(beside(about, job)) + "</p><p class=\"right\">" +
           paper_text(beside(day, words_.in_words(say("page {1} of {2}", sheet + 1, count)))) +
           "</p></header>\n";
}

std::string Sheets::html(std::string_view style) const {
    const std::string points = std::to_string(points_);
    const std::string size = paper_ == Paper::letter ? "letter" : "A4";
    const std::string about = words_.in_words(about_);
    const std::string name = about + (about.empty() || head_.job.empty() ? "" : ", ") + head_.job;
    std::string html =
        "<!DOCTYPE html>\n<html lang=\"" + words_.language +
        "\"><head><meta charset=\"utf-8\"/><title>" + xml_text(name) +
        "</title>\n<style>@page{size:" + size + ";margin:12mm}body{margin:0;font:" + points +
        "pt/1.25 sans-serif}section{width:" + std::to_string(wide_mm) +
        "mm;break-after:page}section:last-child{break-after:auto}"
        "h1,h2,p{margin:0 0 2mm;overflow-wrap:anywhere}h1{font-size:" +
        std::to_string(title_points_) +
        "pt}h2{margin-top:2mm;font-size:" + std::to_string(points_ + heading_more) +
        "pt}table{border-collapse:collapse;table-layout:fixed;margin:0 0 2mm}"
        "td,th{padding:0.7mm 3mm 0.7mm 0;text-align:left;vertical-align:top;overflow-wrap:anywhere;"
        "border-bottom:0.2mm solid #777}tr{break-inside:avoid}.strong{font-weight:bold}"
        ".note{font-size:9pt}.right{text-align:right}header{display:flex;flex-wrap:wrap;justify-"
        "content:space-between;border-bottom:0.4mm solid "
        "#000;margin:0 0 3mm;"
        "font-size:9pt}header p{margin:0 0 0.5mm}svg{display:block;margin:0 0 2mm}" +
        std::string(whole_style()) + table_style() + std::string(style) + "</style></head><body>\n";
    const std::vector<std::string> all = sheets();
    for (std::size_t i = 0; i < all.size(); ++i) {
        html += "<section>" + head_of(i, all.size()) + all[i] + "</section>\n";
    }
    return html + "</body></html>\n";
}

}  // namespace hemline
