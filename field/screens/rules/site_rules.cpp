#include "field/screens/rules/site_rules.h"

#include <algorithm>
#include <iterator>

#include "engine/measure/bearing.h"
#include "engine/record/wind.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/spoken_value.h"

namespace hemline {

namespace {

constexpr const char* keys[] = {"panel_metal",   "trim_metal", "gutter_metal", "screw_metal",
                                "treated_wood",  "trim_held",  "metal_now",    "metal_coldest",
                                "metal_hottest", "wind_from"};
constexpr const char* bearing_of = "bearing.";

bool is_metal(const std::string& key) {
    return key.size() > 6 && key.substr(key.size() - 6) == "_metal";
}

bool is_bearing(const std::string& key) {
    return key == "wind_from" || key.rfind(bearing_of, 0) == 0;
}

std::vector<std::string> values_of(const std::string& key) {
    if (is_metal(key)) {
        std::vector<std::string> metals(std::begin(metals_offered), std::end(metals_offered));
        metals.emplace_back();
        return metals;
    }
    if (key == "treated_wood") {
        return {"no", "yes"};
    }
    if (key == "trim_held") {
        return {"screws", "one_point"};
    }
    if (key == "metal_now") {
        return {"0 F", "20 F", "40 F", "60 F", "80 F", "100 F", "120 F", "140 F", ""};
    }
    if (key == "metal_coldest") {
        return {"-40 F", "-30 F", "-20 F", "-10 F", "0 F", "10 F", "20 F", "30 F"};
    }
    if (key == "metal_hottest") {
        return {"120 F", "140 F", "160 F", "180 F", "200 F"};
    }
    std::vector<std::string> points(compass_points.begin(), compass_points.end());
    points.emplace_back();
    return points;
}

}  // namespace

std::vector<std::string> site_keys(const State& state) {
    std::vector<std::string> all(std::begin(keys), std::end(keys));
    if (!state.job.practice.site.wind_from) {
        return all;
    }
    const auto bearings = bearings_of(state.job);
    bool asks_around = true;  // of the edges around the house one is enough
    for (const EdgeWork& work : state.job.edges) {
        const std::string& id = work.edge.id;
        const bool around = is_around_house(work.edge.kind);
        const bool said = state.job.practice.site.bearings.count(id) > 0;
        if (is_sloped(work.edge.kind) || !has_run(work.edge.kind) ||
            (!said && (bearings.count(id) > 0 || (around && !asks_around)))) {
            continue;
        }
        asks_around = asks_around && !around;
        all.push_back(bearing_of + id);
    }
    return all;
}

bool is_site_key(const std::string& key) {
    return std::find(std::begin(keys), std::end(keys), key) != std::end(keys) || is_bearing(key);
}

Text site_words(const State& state, const std::string& key) {
    return spoken_value(key, site_value(state.job.practice.site, key));
}

std::vector<SiteAnswer> site_answers(const State& state, const std::string& key) {
    std::vector<std::string> values = values_of(key);
    const std::string now = site_value(state.job.practice.site, key);
    if (std::find(values.begin(), values.end(), now) == values.end()) {
        values.push_back(now);  // said in other words, at a desk
    }
    std::vector<SiteAnswer> answers;
    for (const std::string& value : values) {
        answers.push_back({value, spoken_value(key, value)});
    }
    return answers;
}

}  // namespace hemline
