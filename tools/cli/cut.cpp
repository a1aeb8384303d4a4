// `cut`: pieces from the fewest sticks, with a bound and a proof that others can check.
#include <chrono>
#include <fstream>
#include <iostream>

#include "engine/words/quote.h"
#include "engine/words/result.h"
#include "tools/cli/commands.h"
#include "tools/cli/cut_print.h"
#include "tools/cli/input_file.h"
#include "tools/cli/pieces_file.h"

namespace hemline {
namespace {

/// Forty million steps take about a second: without --time a few seconds, the same everywhere.
constexpr std::int64_t steps_without_time = 100'000'000;
constexpr std::int64_t steps_with_time = std::int64_t{1} << 50U;

/// "4 ft × 3", "4 ft x 3", "1219 mm*3", or a length alone for one piece.
Result<StockLength> on_hand_of(std::string_view text, std::optional<BareUnit> unit) {
    std::string_view length = text, count = "1";
    for (const std::string_view sign : {"×", "x", "X", "*"}) {
        const auto at = text.rfind(sign);
        if (at != std::string_view::npos) {
            length = text.substr(0, at);
            count = without_spaces(text.substr(at + sign.size()));
            break;
        }
    }
    const auto supply = read_count(count);
    if (!supply) {
        return Problem{say("{1} does not say how many are on hand.", quoted(text)),
                       say("Write the length, × and a whole number, as \"4 ft × 3\".")};
    }
    const Result<Length> own = read_metal(without_spaces(length), unit);
    if (!own) {
        return own.problem();
    }
    return StockLength{*own, supply, true};
}

/// The sticks as asked for on the command line; says on stderr what is wrong with them.
std::optional<std::vector<StockLength>> stock_of(const CutArguments& arguments) {
    std::vector<StockLength> stock;
    for (const std::string& text : arguments.stock) {
        const Result<Length> length = read_metal(text, arguments.unit);
        if (!length) {
            complain("--stock", length.problem());
            return {};
        }
        stock.push_back({*length, std::nullopt, false});
    }
    for (const std::string& text : arguments.have) {
        const Result<StockLength> own = on_hand_of(text, arguments.unit);
        if (!own) {
            complain("--have", own.problem());
            return {};
        }
        stock.push_back(*own);
    }
    return stock;
}

std::optional<Length> kerf_of(const CutArguments& arguments) {
    if (arguments.kerf.empty() || arguments.kerf == "0") {
        return Length();
    }
    const Result<Length> kerf = parse_length(arguments.kerf, arguments.unit);
    if (!kerf) {
        complain("--kerf", kerf.problem());
        return {};
    }
    if (*kerf < Length() || *kerf > longest_readable()) {
        complain("--kerf",
                 Problem{say("{1} is no width of a cut.", hemline::quoted(arguments.kerf)),
                         say("Give 0 for snips, or the width of the blade.")});
        return {};
    }
    return *kerf;
}

std::optional<std::vector<CutDemand>> pieces_of(const CutArguments& arguments) {
    const Result<std::string> text = read_input_file(arguments.pieces);
    if (!text) {
        complain(arguments.pieces, 0, 0, text.problem());
        return {};
    }
    auto pieces = read_pieces(*text, arguments.unit);
    if (const auto* problem = std::get_if<TableProblem>(&pieces)) {
        complain(arguments.pieces, *problem);
        return {};
    }
    return std::get<0>(std::move(pieces));
}

CuttingPlan plan_for(const CuttingJob& job, std::optional<double> seconds) {
    if (!seconds) {
        return plan_cutting(job, {steps_without_time, {}});
    }
    using Clock = std::chrono::steady_clock;
    const auto until = Clock::now() + std::chrono::duration<double>(*seconds);
    return plan_cutting(job, {steps_with_time, [until] { return Clock::now() >= until; }});
}

bool write_certificate(const std::string& path, const CuttingJob& job, const CuttingPlan& plan) {
    std::ofstream file(path, std::ios::binary);
    file << json_text(certificate_json(job, plan), 2);
    file.close();
    return static_cast<bool>(file);
}

}  // namespace

Exit cut_pieces(const CutArguments& arguments) {
    const auto stock = stock_of(arguments);
    const auto kerf = stock ? kerf_of(arguments) : std::nullopt;
    const auto pieces = kerf ? pieces_of(arguments) : std::nullopt;
    if (!pieces) {
        return Exit::problem_in_input;
    }
    const CuttingJob job{*stock, *pieces, *kerf};
    const CuttingPlan plan = plan_for(job, arguments.seconds);
    if (!arguments.certificate.empty() && !write_certificate(arguments.certificate, job, plan)) {
        return complain("--certificate", 0, 0, "The proof could not be written there.",
                        "Name a file in a folder that may be written to.");
    }
    if (arguments.output == Output::json) {
        print_json(cut_json(job, plan));
    } else {
        std::cout << cut_text(job, plan, marks_for(arguments.unit));
    }
    return Exit::fine;
}

}  // namespace hemline
