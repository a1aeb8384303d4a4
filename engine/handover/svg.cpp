#include "engine/handover/svg.h"

#include "engine/words/shown_text.h"

namespace hemline {

namespace {

constexpr std::int64_t left_room_nm = 12'000'000;
constexpr std::int64_t right_room_nm = 70'000'000;
constexpr std::int64_t top_room_nm = 42'000'000;
constexpr std::int64_t low_room_nm = 10'000'000;

std::string_view class_of(Layer layer) {
    switch (layer) {
        case Layer::cut:
            return "cut";
        case Layer::bend:
            return "bend";
        case Layer::mark:
            break;
    }
    return "mark";
}

std::string point_text(const FlatPoint& p) { return mm_text(p.x) + ',' + mm_text(p.y); }

std::string path_of(const DrawnLine& line) {
    std::string path = "<path class=\"" + std::string(class_of(line.layer)) + "\" d=\"";
    for (std::size_t i = 0; i < line.points.size(); ++i) {
        path += (i == 0 ? "M" : " L") + point_text(line.points[i]);
    }
    return path + (line.closed ? " Z" : "") + "\"/>\n";
}

}  // namespace

std::string xml_text(std::string_view text) {
    std::string safe;
    for (const char c : shown_text(text)) {
        switch (c) {
            case '&':
                safe += "&amp;";
                break;
            case '<':
                safe += "&lt;";
                break;
            case '>':
                safe += "&gt;";
                break;
            case '"':
                safe += "&quot;";
                break;
            default:
                safe += c;
        }
    }
    return safe;
}

std::string_view svg_style() {
    return ".cut{fill:none;stroke:#000;stroke-width:0.25}"
           ".bend{fill:none;stroke:#06c;stroke-width:0.25;stroke-dasharray:3 1.5}"
           ".mark{fill:none;stroke:#777;stroke-width:0.15}"
           "text{font:3px sans-serif;fill:#333}";
}

std::string svg_elements(const Drawing& drawing) {
    std::string text;
    for (const DrawnLine& line : drawing.lines) {
        text += path_of(line);
    }
    for (const DrawnCircle& circle : drawing.circles) {
        text += "<circle class=\"" + std::string(class_of(circle.layer)) + "\" cx=\"" +
                mm_text(circle.centre.x) + "\" cy=\"" + mm_text(circle.centre.y) + "\" r=\"" +
                mm_text(circle.radius.nm()) + "\"/>\n";
    }
    for (const DrawnWords& words : drawing.words) {
        const std::string x = mm_text(words.at.x), y = mm_text(words.at.y);
        text.append("<text x=\"").append(x).append("\" y=\"").append(y).append("\"");
        if (words.turned == Turned::upright) {
            text.append(" transform=\"rotate(-90 ").append(x).append(" ").append(y).append(")\"");
        }
        text.append(">").append(xml_text(words.text)).append("</text>\n");
    }
    return text;
}

std::string svg_of(const Drawing& drawing) {
    const std::int64_t wide = drawing.most.x - drawing.least.x + left_room_nm + right_room_nm;
    const std::int64_t tall = drawing.most.y - drawing.least.y + top_room_nm + low_room_nm;
    const std::string size = mm_text(wide) + ' ' + mm_text(tall);
    std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    text += "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"" + mm_text(wide) +
            "mm\" height=\"" + mm_text(tall) + "mm\" viewBox=\"" +
            mm_text(drawing.least.x - left_room_nm) + ' ' + mm_text(drawing.least.y - top_room_nm) +
            ' ' + size + "\">\n";
    text += "<title>" + xml_text(drawing.title) + "</title>\n";
    text += "<style>" + std::string(svg_style()) + "</style>\n";
    return text + svg_elements(drawing) + "</svg>\n";
}

}  // namespace hemline
