// The one file that holds the DXF library. It writes into files by itself; its own interface for
// what is written is overridden, so that the text stays in memory.
#include "engine/handover/dxf.h"

#include <dxflib/dl_dxf.h>

#include <array>
#include <cstdio>

#include "engine/require.h"
#include "engine/shown_text.h"

namespace hemline {

namespace {

constexpr double words_mm = 3;

class TextWriter : public DL_WriterA {
  public:
    explicit TextWriter(std::string& text) : DL_WriterA("", DL_Codes::AC1009), text_(text) {}
    // Nanometres are six decimals of a millimetre; more would only show the double's rounding.
    void dxfReal(int code, double value) const override {
        std::array<char, 400> number{};
        std::snprintf(number.data(), number.size(), "%.6f", value);
        put(code, number.data());
    }
    void dxfInt(int code, int value) const override { put(code, std::to_string(value)); }
    void dxfHex(int code, int value) const override {
        std::array<char, 20> number{};
        std::snprintf(number.data(), number.size(), "%X", static_cast<unsigned>(value));
        put(code, number.data());
    }
    void dxfString(int code, const char* value) const override { put(code, value); }
    void dxfString(int code, const std::string& value) const override { put(code, value); }

  private:
    void put(int code, const std::string& value) const {
        if (code == 999) {
            return;  // a comment: the library's name
        }
        text_ += std::to_string(code) + "\r\n" + value + "\r\n";
    }
    std::string& text_;
};

double mm(std::int64_t nm) { return static_cast<double>(nm) / 1e6; }

DL_Attributes on(Layer layer) { return {std::string(name_of(layer)), 256, -1, "BYLAYER", 1.0}; }

/// DXF text in R12 is ASCII; a degree sign is written %%d.
std::string dxf_words(const std::string& written) {
    const std::string text = shown_text(written);
    std::string words;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (text.compare(i, 2, "°") == 0) {
            words += "%%d";
            ++i;
        } else {
            const auto c = static_cast<unsigned char>(text[i]);
            words += c < 0x20 || c > 0x7e ? '?' : text[i];
        }
    }
    return words;
}

/// One of the library's tables, which it leaves to the caller to begin and end.
void write_tables(DL_Dxf& dxf, TextWriter& out) {
    out.sectionTables();
    out.tableLinetypes(2);
    dxf.writeLinetype(out, DL_LinetypeData("CONTINUOUS", "Continuous", 0, 0, 0));
    dxf.writeLinetype(out, DL_LinetypeData("BYLAYER", "", 0, 0, 0));
    out.tableEnd();
    out.tableLayers(4);
    const auto layer = [&](const std::string& name, int colour) {
        dxf.writeLayer(out, DL_LayerData(name, 0),
                       DL_Attributes("", colour, -1, "CONTINUOUS", 1.0));
    };
    layer("0", 7);
    layer("CUT", 7);
    layer("BEND", 5);
    layer("MARK", 8);
    out.tableEnd();
    out.sectionEnd();
}

void write_line(DL_Dxf& dxf, TextWriter& out, const DrawnLine& line, std::int64_t low) {
    if (!line.closed && line.points.size() == 2) {
        const FlatPoint& a = line.points[0];
        const FlatPoint& b = line.points[1];
        dxf.writeLine(out, DL_LineData(mm(a.x), mm(low - a.y), 0, mm(b.x), mm(low - b.y), 0),
                      on(line.layer));
        return;
    }
    dxf.writePolyline(
        out, DL_PolylineData(static_cast<int>(line.points.size()), 0, 0, line.closed ? 1 : 0),
        on(line.layer));
    for (const FlatPoint& p : line.points) {
        dxf.writeVertex(out, DL_VertexData(mm(p.x), mm(low - p.y), 0));
    }
    dxf.writePolylineEnd(out);
}

}  // namespace

std::string dxf_of(const Drawing& drawing) {
    std::string text;
    DL_Dxf dxf;
    TextWriter out(text);
    const std::int64_t low = drawing.most.y;
    // The version is told only by opening a file; without a name none is opened.
    require(dxf.out("", DL_Codes::AC1009) == nullptr, "no file is opened for a drawing");
    dxf.writeHeader(out);  // leaves the section open
    out.dxfString(9, "$INSUNITS");
    out.dxfInt(70, 4);  // millimetres
    out.dxfString(9, "$MEASUREMENT");
    out.dxfInt(70, 1);
    out.sectionEnd();
    write_tables(dxf, out);
    out.sectionEntities();
    for (const DrawnLine& line : drawing.lines) {
        write_line(dxf, out, line, low);
    }
    for (const DrawnWords& words : drawing.words) {
        const double x = mm(words.at.x), y = mm(low - words.at.y);
        const double turn = words.turned == Turned::upright ? 1.5707963267948966 : 0;
        dxf.writeText(out,
                      DL_TextData(x, y, 0, x, y, 0, words_mm, 1, 0, 0, 0, dxf_words(words.text),
                                  "STANDARD", turn),
                      on(Layer::mark));
    }
    out.sectionEnd();
    out.dxfEOF();
    return text;
}

}  // namespace hemline
