#include "engine/trim/site.h"

#include "engine/measure/bearing.h"
#include "engine/measure/length_text.h"
#include "engine/trim/site_set.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// More edges than any roof has; a record that names more is wrong.
constexpr std::size_t edges_named_most = 400;
constexpr std::string_view bearing_of = "bearing.", first_of = "first.", seams_of = "seams.";

std::string* metal_named(Site& site, std::string_view key) {
    return key == "panel_metal"    ? &site.panel_metal
           : key == "trim_metal"   ? &site.trim_metal
           : key == "gutter_metal" ? &site.gutter_metal
           : key == "screw_metal"  ? &site.screw_metal
                                   : nullptr;
}

Problem neither(std::string_view key, std::string_view value, const char* one, const char* other) {
    return {say("{1} {2} is neither {3} nor {4}.", std::string(key), quoted(std::string(value)),
                one, other),
            say("Write {1} or {2}.", one, other), 0};
}

template <class Value>
SiteSet put(std::optional<Value>& field, std::string_view value,
            Result<Value> (*parse)(std::string_view)) {
    if (value.empty()) {
        field.reset();
        return {};
    }
    const Result<Value> read = parse(value);
    if (!read) {
        return {true, read.problem()};
    }
    field = *read;
    return {};
}

template <class Value>
SiteSet put(std::map<std::string, Value, std::less<>>& by_edge, std::string_view edge,
            const std::optional<Value>& value) {
    const auto known = by_edge.find(edge);
    if (!value) {
        if (known != by_edge.end()) {
            by_edge.erase(known);
        }
    } else if (known != by_edge.end()) {
        known->second = *value;
    } else if (by_edge.size() == edges_named_most) {
        return {true, Problem{say("This is said of more edges than a roof has."),
                              say("Take back what is said of edges that are not on the job.")}};
    } else {
        by_edge.emplace(edge, *value);
    }
    return {};
}

constexpr std::string_view one_more = ", one more";

/// As print_seams() writes it.
Result<std::optional<SeamsChosen>> parse_seams(std::string_view value) {
    if (value.empty()) {
        return std::optional<SeamsChosen>();
    }
    const std::size_t end = value.find(one_more);
    const std::string_view moved = value.substr(0, end);
    const std::size_t space = moved.find(' ');
    const std::optional<Side> side = side_of(moved.substr(0, space));
    const Result<Length> by =
        parse_length(space == moved.npos ? std::string_view() : moved.substr(space + 1));
    if (!side || !by || (end != value.npos && value.substr(end) != one_more)) {
        return Problem{say("{1} does not say how far seams are moved.", quoted(std::string(value))),
                       say("Write it as \"right 2 in\".")};
    }
    return std::optional(SeamsChosen{*side == Side::left ? -*by : *by, end != value.npos});
}

SiteSet set_of_edge(Site& site, std::string_view key, std::string_view value) {
    if (key.substr(0, bearing_of.size()) == bearing_of && key.size() > bearing_of.size()) {
        std::optional<Angle> bearing;
        const SiteSet read = put(bearing, value, parse_bearing);
        return read.problem ? read : put(site.bearings, key.substr(bearing_of.size()), bearing);
    }
    if (key.substr(0, first_of.size()) == first_of && key.size() > first_of.size()) {
        const std::optional<Side> side = side_of(value);
        if (!side && !value.empty()) {
            return {true, neither(key, value, "left", "right")};
        }
        return put(site.firsts, key.substr(first_of.size()), side);
    }
    if (key.substr(0, seams_of.size()) == seams_of && key.size() > seams_of.size()) {
        const Result<std::optional<SeamsChosen>> seams = parse_seams(value);
        return seams ? put(site.seams, key.substr(seams_of.size()), *seams)
                     : SiteSet{true, seams.problem()};
    }
    return {false, {}};
}

}  // namespace

std::string print_seams(const SeamsChosen& seams) {
    return std::string(word_of(seams.shift < Length() ? Side::left : Side::right)) + ' ' +
           print_length(absolute(seams.shift)) + std::string(seams.one_more ? one_more : "");
}

SiteSet set_site(Site& site, std::string_view key, std::string_view value) {
    if (std::string* const metal = metal_named(site, key)) {
        *metal = value;
        return {};
    }
    if (key == "treated_wood") {
        if (!value.empty() && value != "yes" && value != "no") {
            return {true, neither(key, value, "yes", "no")};
        }
        site.treated_wood = value == "yes";
        return {};
    }
    if (key == "trim_held") {
        if (!value.empty() && value != "screws" && value != "one_point") {
            return {true, neither(key, value, "screws", "one_point")};
        }
        site.held = value == "one_point" ? Held::at_one_point : Held::by_screws;
        return {};
    }
    if (key == "metal_now") {
        return put(site.metal_now, value, parse_temperature);
    }
    if (key == "metal_coldest" || key == "metal_hottest") {
        Temperature Site::*const field =
            key == "metal_coldest" ? &Site::metal_coldest : &Site::metal_hottest;
        std::optional<Temperature> said;
        const SiteSet read = put(said, value, parse_temperature);
        site.*field = read.problem ? site.*field : said.value_or(Site().*field);
        return read;
    }
    return key == "wind_from" ? put(site.wind_from, value, parse_bearing)
                              : set_of_edge(site, key, value);
}

std::string site_value(const Site& site, std::string_view key) {
    Site copy = site;
    if (const std::string* const metal = metal_named(copy, key)) {
        return *metal;
    }
    if (key == "treated_wood") {
        return site.treated_wood ? "yes" : "no";
    }
    if (key == "trim_held") {
        return site.held == Held::at_one_point ? "one_point" : "screws";
    }
    if (key == "metal_now") {
        return site.metal_now ? print_temperature(*site.metal_now) : "";
    }
    if (key == "metal_coldest") {
        return print_temperature(site.metal_coldest);
    }
    if (key == "metal_hottest") {
        return print_temperature(site.metal_hottest);
    }
    if (key == "wind_from") {
        return site.wind_from ? print_bearing(*site.wind_from) : "";
    }
    if (key.substr(0, bearing_of.size()) == bearing_of) {
        const auto known = site.bearings.find(key.substr(bearing_of.size()));
        return known == site.bearings.end() ? "" : print_bearing(known->second);
    }
    if (key.substr(0, first_of.size()) == first_of) {
        const auto known = site.firsts.find(key.substr(first_of.size()));
        return known == site.firsts.end() ? "" : std::string(word_of(known->second));
    }
    if (key.substr(0, seams_of.size()) == seams_of) {
        const auto known = site.seams.find(key.substr(seams_of.size()));
        return known == site.seams.end() ? "" : print_seams(known->second);
    }
    return "";
}

const std::string& metal_of(const Edge& edge, const Site& site) {
    return edge.metal.empty() ? site.trim_metal : edge.metal;
}

}  // namespace hemline
