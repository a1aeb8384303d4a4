// ASCII DXF of release 12: pairs of lines, a group code and its value. Every program that reads DXF
// reads it, and it needs no handles and no objects.
#include "engine/handover/dxf.h"

#include <algorithm>
#include <array>
#include <cstdio>

#include "engine/words/utf8.h"

namespace hemline {

namespace {

constexpr std::int64_t words_nm = 3'000'000;  // height of the letters

// Group codes.
constexpr int entity = 0, text_value = 1, name = 2, style_name = 7, layer_name = 8;
constexpr int variable = 9, linetype_name = 6, size = 40, turned_by = 50, colour = 62;
constexpr int vertices_follow = 66, flags = 70;

struct LayerLook {
    Layer layer;
    int colour;
};
constexpr LayerLook layer_looks[] = {{Layer::cut, 7}, {Layer::bend, 5}, {Layer::mark, 8}};

/// "25.4", "100.0": some readers take a coordinate without a decimal point for an integer.
std::string real_text(std::int64_t nm) {
    const std::string text = mm_text(nm);
    return text.find('.') == std::string::npos ? text + ".0" : text;
}

/// The file as it grows. y is up in DXF: `low` is the page's lower edge.
class DxfText {
  public:
    explicit DxfText(std::int64_t low) : low_(low) {}

    void put(int code, std::string_view value) {
        text_ += std::to_string(code) + "\r\n";
        text_.append(value).append("\r\n");
    }
    void put(int code, int value) { put(code, std::to_string(value)); }
    /// x, y and z in groups 10, 20 and 30, plus an offset.
    void put_point(int past, const FlatPoint& at) {
        put(10 + past, real_text(at.x));
        put(20 + past, real_text(low_ - at.y));
        put(30 + past, "0.0");
    }
    void begin(std::string_view kind, Layer layer) {
        put(entity, kind);
        put(layer_name, name_of(layer));
    }
    [[nodiscard]] const std::string& text() const { return text_; }

  private:
    std::int64_t low_;
    std::string text_;
};

void write_header(DxfText& out, const Drawing& drawing) {
    out.put(entity, "SECTION");
    out.put(name, "HEADER");
    out.put(variable, "$ACADVER");
    out.put(text_value, "AC1009");
    out.put(variable, "$INSUNITS");  // belongs to later versions, but readers look for it
    out.put(flags, 4);               // millimeters
    out.put(variable, "$MEASUREMENT");
    out.put(flags, 1);
    out.put(variable, "$EXTMIN");
    out.put_point(0, {drawing.least.x, drawing.most.y});
    out.put(variable, "$EXTMAX");
    out.put_point(0, {drawing.most.x, drawing.least.y});
    out.put(entity, "ENDSEC");
}

void begin_table(DxfText& out, std::string_view kind, int rows) {
    out.put(entity, "TABLE");
    out.put(name, kind);
    out.put(flags, rows);
}

void write_layer(DxfText& out, std::string_view layer, int its_colour) {
    out.put(entity, "LAYER");
    out.put(name, layer);
    out.put(flags, 0);
    out.put(colour, its_colour);
    out.put(linetype_name, "CONTINUOUS");
}

void write_tables(DxfText& out) {
    out.put(entity, "SECTION");
    out.put(name, "TABLES");
    begin_table(out, "LTYPE", 1);
    out.put(entity, "LTYPE");
    out.put(name, "CONTINUOUS");
    out.put(flags, 0);
    out.put(3, "Solid line");
    out.put(72, 65);  // the only alignment there is
    out.put(73, 0);   // no dashes
    out.put(size, "0.0");
    out.put(entity, "ENDTAB");
    begin_table(out, "LAYER", 4);
    write_layer(out, "0", 7);
    for (const LayerLook& look : layer_looks) {
        write_layer(out, name_of(look.layer), look.colour);
    }
    out.put(entity, "ENDTAB");
    begin_table(out, "STYLE", 1);
    out.put(entity, "STYLE");
    out.put(name, "STANDARD");
    out.put(flags, 0);
    out.put(size, "0.0");  // each text has its height
    out.put(41, "1.0");    // width
    out.put(turned_by, "0.0");
    out.put(71, 0);
    out.put(42, real_text(words_nm));
    out.put(3, "txt");
    out.put(4, "");
    out.put(entity, "ENDTAB");
    out.put(entity, "ENDSEC");
}

void write_line(DxfText& out, const DrawnLine& line) {
    if (!line.closed && line.points.size() == 2) {
        out.begin("LINE", line.layer);
        out.put_point(0, line.points[0]);
        out.put_point(1, line.points[1]);
        return;
    }
    out.begin("POLYLINE", line.layer);
    out.put(vertices_follow, 1);
    out.put(flags, line.closed ? 1 : 0);
    for (const FlatPoint& point : line.points) {
        out.begin("VERTEX", line.layer);
        out.put_point(0, point);
    }
    out.begin("SEQEND", line.layer);
}

void write_circle(DxfText& out, const DrawnCircle& circle) {
    out.begin("CIRCLE", circle.layer);
    out.put_point(0, circle.centre);
    out.put(size, real_text(circle.radius.nm()));
}

void write_words(DxfText& out, const DrawnWords& words) {
    out.begin("TEXT", Layer::mark);
    out.put_point(0, words.at);
    out.put(size, real_text(words_nm));
    out.put(text_value, dxf_words(words.text));
    out.put(turned_by, words.turned == Turned::upright ? "90.0" : "0.0");
    out.put(style_name, "STANDARD");
}

std::string by_number(char32_t letter) {
    std::array<char, 16> text{};
    std::snprintf(text.data(), text.size(), "\\U+%04X", static_cast<unsigned>(letter));
    return text.data();
}

std::string dxf_letter(char32_t letter) {
    if (letter < 0x20) {
        return {'^', static_cast<char>(letter + 0x40)};
    }
    if (letter == U'^') {
        return "^ ";
    }
    if (letter == U'°') {
        return "%%d";  // older than \U+, so that every reader knows it
    }
    if (letter > 0xFFFF) {
        return "?";  // DXF has no way to write it
    }
    return letter < 0x7F && letter != '\\' ? std::string(1, static_cast<char>(letter))
                                           : by_number(letter);
}

}  // namespace

std::string dxf_words(std::string_view text) {
    std::string words;
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint letter = code_point_at(text, at);
        const std::string next = letter.bytes == 0 ? "?" : dxf_letter(letter.value);
        // Two percent signs would begin a control code.
        words += words.ends_with('%') && next.starts_with('%') ? " " + next : next;
        at += std::max<std::size_t>(1, letter.bytes);
    }
    return words;
}

std::string dxf_of(const Drawing& drawing) {
    DxfText out(drawing.most.y);
    write_header(out, drawing);
    write_tables(out);
    out.put(entity, "SECTION");
    out.put(name, "ENTITIES");
    for (const DrawnLine& line : drawing.lines) {
        write_line(out, line);
    }
    for (const DrawnCircle& circle : drawing.circles) {
        write_circle(out, circle);
    }
    for (const DrawnWords& words : drawing.words) {
        write_words(out, words);
    }
    out.put(entity, "ENDSEC");
    out.put(entity, "EOF");
    return out.text();
}

}  // namespace hemline
