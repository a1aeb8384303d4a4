// `roof`: the planes and the edges of a roof, worked out from the walk round its eaves.
#include <cmath>
#include <iostream>

#include "engine/handover/roof_drawing.h"
#include "engine/handover/roof_readings.h"
#include "engine/roof/nearest.h"
#include "tools/cli/commands.h"
#include "tools/cli/output_file.h"
#include "tools/cli/print.h"
#include "tools/cli/roof_file.h"

namespace hemline {
namespace {

/// All sides of the roof, as edges and planes count them.
using Sides = std::vector<BodySide>;

Sides sides_of(const SidesFile& file) {
    Sides sides;
    for (const RoofBody& body : file.bodies) {
        sides.insert(sides.end(), body.sides.begin(), body.sides.end());
    }
    return sides;
}

/// Whole square nanometers: JSON numbers do not hold them exactly.
std::string nm2_text(double area) {
    std::string text = std::to_string(area);
    return text.substr(0, text.find('.'));
}

Json place_json(const Space& place) {
    return {nearest_nm(place.x).nm(), nearest_nm(place.y).nm(), nearest_nm(place.z).nm()};
}

template <class Indices>
Json ids_json(const Sides& sides, const Indices& which) {
    Json json = Json::array();
    for (const std::size_t side : which) {
        json.push_back(sides[side].id);
    }
    return json;
}

Json roof_edge_json(const Sides& sides, const BodyEdge& edge) {
    Json json;
    json["edge"] = edge.id;
    json["kind"] = word_of(edge.kind);
    json["planes"] = ids_json(sides, edge.planes);
    json["sides"] = ids_json(sides, edge.sides);
    json["left"] = word_of(edge.left);
    json["right"] = word_of(edge.right);
    json["pitches"] = Json::array();
    for (const std::size_t plane : edge.planes) {
        json["pitches"].push_back(print_slope(*sides[plane].pitch));
    }
    json["corner_deg"] = edge.corner_degrees ? Json(micro_rounded(*edge.corner_degrees)) : Json();
    json["length_nm"] = nearest_nm(edge.length).nm();
    json["off_nm"] = nearest_nm(edge.off).nm();
    json["from"] = place_json(edge.from);
    json["to"] = place_json(edge.to);
    return json;
}

Json walks_json(const std::vector<std::vector<Space>>& walks) {
    Json json = Json::array();
    for (const std::vector<Space>& walk : walks) {
        Json corners = Json::array();
        for (const Space& corner : walk) {
            corners.push_back(place_json(corner));
        }
        json.push_back(std::move(corners));
    }
    return json;
}

Json plane_json(const SidesFile& file, const Sides& sides, const Roof& roof,
                const BodyPlane& plane) {
    Json json;
    json["plane"] = sides[plane.side].id;
    json["body"] = file.bodies[plane.body].name;
    json["eaves"] = ids_json(sides, plane.eaves);
    json["pitch"] = print_slope(*sides[plane.side].pitch);
    json["plan_nm2"] = nm2_text(plane.plan_area);
    json["deck_nm2"] = nm2_text(plane.deck_area);
    const Json pieces = walks_json(plane.pieces);
    json["corners"] = pieces.front();
    if (pieces.size() > 1) {
        json["pieces"] = pieces;
    }
    json["holes"] = walks_json(plane.holes);
    json["bounds"] = Json::array();
    for (const BodyEdge& edge : roof.edges) {
        if (std::find(edge.planes.begin(), edge.planes.end(), plane.side) != edge.planes.end()) {
            json["bounds"].push_back(edge.id);
        }
    }
    return json;
}

Json roof_json(const SidesFile& file, const Roof& roof, Marks marks) {
    const Sides sides = sides_of(file);
    Json json;
    json["closes"] = roof.closes;
    json["miss_nm"] = roof.miss.nm();
    json["planes"] = Json::array();
    for (const BodyPlane& plane : roof.planes) {
        json["planes"].push_back(plane_json(file, sides, roof, plane));
    }
    json["edges"] = Json::array();
    for (const BodyEdge& edge : roof.edges) {
        json["edges"].push_back(roof_edge_json(sides, edge));
    }
    json["problems"] = Json::array();
    if (!roof.closes) {
        json["problems"].push_back(miss_text(roof.miss).english(marks));
    }
    return json;
}

void print_roof_text(const SidesFile& file, const Roof& roof, Marks marks) {
    if (!roof.closes) {
        std::cout << miss_text(roof.miss).english(marks) << '\n';
        return;
    }
    constexpr double foot_nm = 304.8e6;
    const Sides sides = sides_of(file);
    std::cout << "Worked out from the walk, never to cut from: measure each edge.\n"
              << padded("edge", 6) << padded("kind", 12) << padded("length", 18)
              << padded("within", 10) << "ends\n";
    for (const BodyEdge& edge : roof.edges) {
        std::cout << padded(edge.id, 6) << padded(spoken(edge.kind).english(), 12)
                  << padded(print_length(nearest_nm(edge.length), marks), 18)
                  << padded(print_length(nearest_nm(edge.off), marks), 10)
                  << spoken(edge.left).english() << ", " << spoken(edge.right).english() << '\n';
    }
    std::cout << padded("roof", 6) << padded("pitch", 8) << padded("in plan", 15)
              << "on the deck\n";
    for (const BodyPlane& plane : roof.planes) {
        std::cout << padded(sides[plane.side].id, 6)
                  << padded(print_slope(*sides[plane.side].pitch), 8)
                  << padded(rounded(plane.plan_area / foot_nm / foot_nm, 1) + " sq ft", 15)
                  << rounded(plane.deck_area / foot_nm / foot_nm, 1) << " sq ft\n";
    }
}

}  // namespace

Exit print_roof(const RoofArguments& arguments) {
    const std::optional<RoofFile> read = read_roof_file(arguments.sides, arguments.unit);
    if (!read) {
        return Exit::problem_in_input;
    }
    const auto& [file, roof] = *read;
    const Marks marks = marks_for(arguments.unit);
    if (roof.closes && (!write_output_file("--svg", arguments.svg,
                                           roof_svg(roof, file.bodies, english_on(marks))) ||
                        !write_output_file("--readings", arguments.readings,
                                           expected_readings(roof, file.bodies, marks)))) {
        return Exit::problem_in_input;
    }
    if (arguments.output == Output::json) {
        print_json(roof_json(file, roof, marks));
    } else {
        print_roof_text(file, roof, marks);
    }
    return Exit::fine;
}

}  // namespace hemline
