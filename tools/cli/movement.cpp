// `movement`: how far a panel moves, and the gap, hem, lip and joints that let it.
#include <iostream>

#include "engine/panels/expansion_joints.h"
#include "engine/panels/movement.h"
#include "tools/cli/commands.h"
#include "tools/cli/metal_temperatures.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

struct Moves {
    MovementAsked asked;
    Movement movement;
    std::optional<ExpansionJoints> joints;  ///< none: no public figure for this metal
    std::optional<ClipMark> clip;
};

Problem no_public_joints() {
    return {say("No public figure was found for the longest run of this metal between joints."),
            say("Ask the maker.")};
}

Json problems_json(const std::vector<Problem>& problems, Marks marks) {
    Json json = Json::array();
    for (const Problem& problem : problems) {
        json.push_back(
            {{"what", problem.what.english(marks)}, {"mend", problem.mend.english(marks)}});
    }
    return json;
}

Json movement_json(const Moves& moves, const std::vector<Problem>& problems, Marks marks) {
    const bool refused = !moves.movement.refused.empty();
    const auto unless_refused = [&](Length length) { return refused ? Json() : Json(length.nm()); };
    Json json;
    json["shrink_nm"] = moves.movement.shrink.nm();
    json["grow_nm"] = moves.movement.grow.nm();
    json["gap_nm"] = moves.movement.gap.nm();
    json["hem_nm"] = unless_refused(moves.movement.hem);
    json["lip_nm"] = unless_refused(moves.movement.lip);
    if (moves.asked.fixed == FixedLine::eave) {
        json["top_room_nm"] = moves.movement.top_room.nm();
        json["cover_nm"] = moves.movement.cover.nm();
    }
    json["joints"] = moves.joints ? Json(moves.joints->count) : Json();
    json["segment_nm"] = moves.joints ? Json(moves.joints->segment.nm()) : Json();
    json["joint_gap_nm"] = moves.joints ? Json(moves.joints->gap.nm()) : Json();
    if (moves.clip) {
        json["clip_away_nm"] = moves.clip->away.nm();
        json["clip_toward_nm"] = moves.clip->toward.nm();
    }
    json["problems"] = problems_json(problems, marks);
    return json;
}

void print_movement_text(const Moves& moves, const std::vector<Problem>& problems, Marks marks) {
    const Movement& movement = moves.movement;
    const auto closely = [&](Length length) { return tell_closely(length, marks); };
    std::cout << "From now the panel shrinks " << closely(movement.shrink) << " and grows "
              << closely(movement.grow) << ".\n";
    if (moves.asked.fixed == FixedLine::eave) {
        std::cout << "Pinned at the eave: leave " << tell_length(movement.top_room, marks)
                  << " above its end; cap or headwall leg covers the closure by "
                  << tell_length(movement.cover, marks) << ".\n";
    }
    if (movement.refused.empty()) {
        std::cout << "Hook gap now " << tell_length(movement.gap, marks) << ", hem "
                  << tell_length(movement.hem, marks) << ", lip at least "
                  << tell_length(movement.lip, marks) << ".\n";
    }
    if (moves.clip) {
        std::cout << "Clip tab: room away from the fixed line " << closely(moves.clip->away)
                  << ", toward it " << closely(moves.clip->toward) << ".\n";
    }
    if (moves.joints && moves.joints->count == 0) {
        std::cout << "As one run: no joint.\n";
    } else if (moves.joints) {
        std::cout << "As one run: joints " << moves.joints->count << ", one each "
                  << tell_length(moves.joints->segment, marks) << ", gap "
                  << tell_length(moves.joints->gap, marks) << ".\n";
    }
    for (const Problem& problem : problems) {
        std::cout << said(problem).english(marks) << '\n';
    }
}

/// Reads the length of an option. Says on stderr what is wrong.
std::optional<Length> read_option(const char* name, const std::string& text,
                                  std::optional<BareUnit> unit) {
    const Result<Length> length = parse_length(text, unit);
    if (!length) {
        complain(name, length.problem());
        return {};
    }
    return *length;
}

}  // namespace

Exit print_movement(const MovementArguments& arguments) {
    const MetalFamily metal = metal_family(arguments.metal);
    const auto length = read_option("--length", arguments.length, arguments.unit);
    const auto at = read_temperatures(arguments.now, arguments.low, arguments.high);
    if (!length || !at) {
        return Exit::problem_in_input;
    }
    Moves moves{{metal, *length, *at, arguments.fixed}, {}, {}, {}};
    const Result<Movement> movement = movement_of(moves.asked);
    if (!movement) {
        return complain(metal == MetalFamily::other ? "--metal"
                        : *length <= Length()       ? "--length"
                                                    : "--at",
                        movement.problem());
    }
    moves.movement = *movement;
    std::vector<Problem> problems = movement->refused;
    if (const auto spacing = joint_spacing(metal)) {
        moves.joints = joints_in(*length, *spacing, metal, at->now, at->hottest);
    } else {
        problems.push_back(no_public_joints());
    }
    if (!arguments.lip.empty()) {
        const auto lip = read_option("--lip", arguments.lip, arguments.unit);
        if (!lip) {
            return Exit::problem_in_input;
        }
        if (auto jams = lip_jams(*movement, *lip)) {
            problems.push_back(*jams);
        }
    }
    if (!arguments.travel.empty()) {
        const auto travel = read_option("--travel", arguments.travel, arguments.unit);
        if (!travel) {
            return Exit::problem_in_input;
        }
        const Result<ClipMark> mark = clip_mark(*movement, *length, *length, *travel);
        if (mark) {
            moves.clip = *mark;
        } else {
            problems.push_back(mark.problem());
        }
    }
    const Marks marks = marks_for(arguments.unit);
    if (arguments.output == Output::json) {
        print_json(movement_json(moves, problems, marks));
    } else {
        print_movement_text(moves, problems, marks);
    }
    return Exit::fine;
}

}  // namespace hemline
