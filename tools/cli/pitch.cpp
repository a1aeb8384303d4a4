// `pitch`: which trim and seam suit a pitch, why the others do not, and the angle of the fold.
#include <algorithm>
#include <iostream>

#include "engine/measure/length_text.h"
#include "engine/roof/fold_angle.h"
#include "engine/roof/square_check.h"
#include "engine/trim/pitch_check.h"
#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "tools/cli/assets_here.h"
#include "tools/cli/commands.h"
#include "tools/cli/print.h"

namespace hemline {
namespace {

std::string fold_text(std::string_view of, FoldAngle fold) {
    return std::string(of) + ": " + rounded(fold.included_degrees, 2) +
           " deg included on the metal, bend " + rounded(fold.bend_degrees, 2) +
           " deg on the brake\n";
}

/// The fold of the trim that is asked about, where it is not an eave's; with a roof of the same
/// pitch on the other side, at a square corner.
std::optional<FoldAngle> own_fold(Slope pitch, const Trim* trim) {
    if (trim == nullptr || trim->role != TrimRole::main || trim->kind == EdgeKind::eave) {
        return {};
    }
    const Result<FoldAngle> fold = fold_of({trim->kind, pitch, {}, {}, Fascia::plumb});
    return fold ? std::optional(*fold) : std::nullopt;
}

Json pitch_json(Slope pitch, const PitchCheck& check, const Trim* trim) {
    const FoldAngle plumb = eave_fold(pitch, Fascia::plumb);
    const FoldAngle square = eave_fold(pitch, Fascia::square_cut);
    Json json;
    json["degrees"] = degrees_of(pitch);
    json["percent"] = percent_of(pitch);
    json["slope_factor"] = slope_factor_of(pitch);
    json["fold_plumb_deg"] = plumb.included_degrees;
    json["fold_square_deg"] = square.included_degrees;
    json["bend_plumb_deg"] = plumb.bend_degrees;
    json["bend_square_deg"] = square.bend_degrees;
    if (const auto fold = own_fold(pitch, trim)) {
        json["fold_deg"] = fold->included_degrees;
        json["bend_deg"] = fold->bend_degrees;
    }
    json["serves"] = check.serves;
    json["refused"] = Json::array();
    for (const Refusal& refusal : check.refused) {
        json["refused"].push_back({{"id", refusal.id}, {"reason", refusal.reason.english()}});
    }
    json["measure_again"] = check.measure_again.english();
    json["seams"] = Json::array();
    for (const SeamVerdict& seam : check.seams) {
        json["seams"].push_back({{"seam", word_of(seam.seam)},
                                 {"serves", seam.serves},
                                 {"reason", seam.reason.english()}});
    }
    return json;
}

bool serves(const PitchCheck& check, std::string_view trim) {
    return std::find(check.serves.begin(), check.serves.end(), trim) != check.serves.end();
}

std::string trim_text(const PitchCheck& check, const Trim& trim) {
    if (trim.role != TrimRole::main) {
        return trim.id + " serves every pitch its edge's own trim serves\n";
    }
    return serves(check, trim.id) ? trim.id + " serves\n" : trim.id + " does not serve\n";
}

std::string pitch_text(Slope pitch, const PitchCheck& check, const Trim* trim) {
    std::string text = print_slope(pitch) + " = " + rounded(degrees_of(pitch), 2) +
                       " deg = " + rounded(percent_of(pitch), 2) + " %, slope factor " +
                       rounded(slope_factor_of(pitch), 4) + '\n';
    if (const auto fold = own_fold(pitch, trim)) {
        text += fold_text("Fold of " + trim->id, *fold);
    } else {
        text += fold_text("Eave fold, plumb fascia", eave_fold(pitch, Fascia::plumb));
        text += fold_text("Eave fold, square-cut fascia", eave_fold(pitch, Fascia::square_cut));
    }
    if (trim != nullptr) {
        text += trim_text(check, *trim);
    }
    for (const std::string& id : check.serves) {
        text += "serves:  " + id + '\n';
    }
    for (const Refusal& refusal : check.refused) {
        text += "refused: " + refusal.id + ": " + refusal.reason.english() + '\n';
    }
    for (const SeamVerdict& seam : check.seams) {
        text += "seam:    " + spoken(seam.seam).english() +
                (seam.serves ? " serves" : ": " + seam.reason.english()) + '\n';
    }
    if (!check.measure_again.empty()) {
        text += "Measure again: " + check.measure_again.english() + '\n';
    }
    return text + std::string(caution()) + '\n';
}

/// A gable's slope length compared with its run and the pitch.
struct Gable {
    ShapeCheck check;
    Result<double> implied_degrees;
};

/// The gable asked about, none where no lengths were given; false: a complaint was printed.
bool read_gable(const PitchArguments& arguments, Slope pitch, std::optional<Gable>& gable) {
    if (!arguments.slope || !arguments.run) {
        return true;
    }
    const Result<Length> slope = parse_length(*arguments.slope, arguments.unit);
    const Result<Length> run = parse_length(*arguments.run, arguments.unit);
    if (!slope || !run) {
        complain(slope ? "--run" : "--slope", (slope ? run : slope).problem());
        return false;
    }
    gable = Gable{check_gable(*slope, *run, pitch, Tape()), implied_pitch_degrees(*slope, *run)};
    return true;
}

void put_gable(Json& json, const Gable& gable, Marks marks) {
    json["gable_holds"] = gable.check.holds();
    put_length(json, "gable_off", gable.check.off, marks);
    put_length(json, "gable_allowed", gable.check.allowed, marks);
    json["implied_pitch_deg"] =
        gable.implied_degrees ? Json(micro_rounded(*gable.implied_degrees)) : Json();
}

std::string gable_text(const Gable& gable, Marks marks) {
    const Length off = gable.check.off;
    return "The slope length is " + tell_closely(absolute(off), marks) +
           (off < Length() ? " shorter" : " longer") +
           " than run and pitch give; the readings allow " +
           tell_closely(gable.check.allowed, marks) +
           (gable.check.holds() ? ": they agree\n" : ": read again\n") +
           (gable.implied_degrees
                ? "Slope length and run alone make " + rounded(*gable.implied_degrees, 2) + " deg\n"
                : gable.implied_degrees.problem().what.english(marks) + '\n');
}

/// "a, b, c": all trims.
std::string ids_of(const Catalogue& catalogue) {
    std::string ids;
    for (const Trim& trim : catalogue.trims()) {
        ids += (ids.empty() ? "" : ", ") + trim.id;
    }
    return ids;
}

}  // namespace

Exit check_pitch_text(const PitchArguments& arguments) {
    const Result<Slope> pitch = parse_slope(arguments.pitch);
    if (!pitch) {
        return complain("PITCH", pitch.problem());
    }
    const std::optional<Assets> assets = assets_here();
    if (!assets) {
        return Exit::problem_in_input;
    }
    const Catalogue& catalogue = assets->catalogue;
    const Trim* trim = arguments.trim.empty() ? nullptr : catalogue.find(arguments.trim);
    if (trim == nullptr && !arguments.trim.empty()) {
        return complain("--trim", 1, 1,
                        "No trim is called " + hemline::quoted(arguments.trim) + ".",
                        "Name one of: " + ids_of(catalogue) + ".");
    }
    const EdgeKind kind = trim == nullptr ? EdgeKind::eave : trim->kind;
    const PitchCheck check = check_pitch(*pitch, kind, arguments.seam, catalogue);
    std::optional<Gable> gable;
    if (!read_gable(arguments, *pitch, gable)) {
        return Exit::problem_in_input;
    }
    const Marks marks = marks_for(arguments.unit);
    if (arguments.output == Output::json) {
        Json json = pitch_json(*pitch, check, trim);
        if (gable) {
            put_gable(json, *gable, marks);
        }
        print_json(json);
    } else {
        std::cout << pitch_text(*pitch, check, trim) << (gable ? gable_text(*gable, marks) : "");
    }
    return Exit::fine;
}

}  // namespace hemline
