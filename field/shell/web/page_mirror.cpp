#include "field/shell/web/page_mirror.h"

#include <cmath>
#include <nlohmann/json.hpp>
#include <optional>

#include "engine/words/shown_text.h"

namespace hemline {

namespace {

using Json = nlohmann::json;

/// CSS pixels, to a hundredth.
double css(float pixels, float density) {
    return std::round(static_cast<double>(pixels / density) * 100) / 100;
}

Json box_json(Box box, float density) {
    return {{"x", css(box.x, density)},
            {"y", css(box.y, density)},
            {"w", css(box.w, density)},
            {"h", css(box.h, density)}};
}

}  // namespace

std::string mirror_of(const Stage& stage, const App& app, float density) {
    Json targets = Json::array();
    const std::optional<Target> focus = stage.focus();
    for (const Target& target : stage.targets()) {
        Json entry = box_json(target.box, density);
        entry["name"] = shown_text(target.name);
        entry["label"] = target.label;
        entry["chosen"] = target.chosen;
        entry["focused"] = focus && focus->name == target.name;
        targets.push_back(std::move(entry));
    }
    Json texts = Json::array();
    std::string warning;
    for (const Words& words : stage.words()) {
        Json entry = box_json(words.box, density);
        entry["words"] = words.words;
        texts.push_back(std::move(entry));
        if (words.warning) {
            warning += (warning.empty() ? "" : " ") + words.words;
        }
    }
    const State& state = app.state();
    const Json all = {{"language", state.language},
                      {"ground", app.light() == Light::night ? "#14181c" : "#fbfaf6"},
                      {"title", stage.words().empty() ? "" : stage.words().front().words},
                      {"saved", app.in_words(state.saved)},
                      {"warning", warning},
                      {"waits", stage.refusal_left() > 0},
                      {"targets", std::move(targets)},
                      {"texts", std::move(texts)}};
    return all.dump(-1, ' ', false, Json::error_handler_t::replace);
}

}  // namespace hemline
