#include "engine/cutting/stick_program.h"

namespace hemline {

LinearProgram StickProgram::program_of(const std::vector<std::int64_t>& uncut,
                                       const std::vector<std::int64_t>& supply) {
    std::vector<double> at_least, at_most;
    for (std::size_t i = 0; i < uncut.size(); ++i) {
        if (uncut[i] > 0) {
            row_of_piece_[i] = static_cast<std::ptrdiff_t>(at_least.size());
            at_least.push_back(static_cast<double>(uncut[i]));
        }
    }
    for (std::size_t k = 0; k < supply.size(); ++k) {
        if (!task_.stock[k].unlimited && supply[k] > 0) {
            row_of_stock_[k] = static_cast<std::ptrdiff_t>(at_least.size() + at_most.size());
            at_most.push_back(static_cast<double>(supply[k]));
        }
    }
    return {at_least, at_most};
}

StickProgram::StickProgram(const CuttingTask& task, const std::vector<std::int64_t>& uncut,
                           const std::vector<std::int64_t>& supply)
    : task_(task),
      row_of_piece_(uncut.size(), -1),
      row_of_stock_(supply.size(), -1),
      program_(program_of(uncut, supply)) {}

void StickProgram::add(const Filling& filling) {
    LinearProgram::Entries entries;
    for (const auto& part : filling.parts) {
        if (row_of_piece_[part.piece] >= 0) {
            entries.emplace_back(static_cast<std::size_t>(row_of_piece_[part.piece]),
                                 static_cast<double>(part.count));
        }
    }
    if (row_of_stock_[filling.stock] >= 0) {
        entries.emplace_back(static_cast<std::size_t>(row_of_stock_[filling.stock]), 1.0);
    }
    program_.add(std::move(entries), task_.stock[filling.stock].on_hand ? 0.0 : 1.0);
    fillings_.push_back(filling);
}

void StickProgram::cut(const Filling& filling, std::int64_t times) {
    const auto number = static_cast<double>(times);
    for (const auto& part : filling.parts) {
        if (row_of_piece_[part.piece] >= 0) {
            program_.take_off(static_cast<std::size_t>(row_of_piece_[part.piece]),
                              number * static_cast<double>(part.count));
        }
    }
    if (row_of_stock_[filling.stock] >= 0) {
        program_.take_off(static_cast<std::size_t>(row_of_stock_[filling.stock]), number);
    }
    program_.settle_levels();
}

double StickProgram::piece_price(std::size_t piece) const {
    return row_of_piece_[piece] < 0
               ? 0
               : program_.price(static_cast<std::size_t>(row_of_piece_[piece]));
}

double StickProgram::stock_price(std::size_t stock) const {
    return row_of_stock_[stock] < 0
               ? 0
               : -program_.price(static_cast<std::size_t>(row_of_stock_[stock]));
}

std::vector<StickProgram::Use> StickProgram::uses() const {
    std::vector<Use> uses;
    const std::vector<double> times = program_.uses();
    for (std::size_t j = 0; j < times.size(); ++j) {
        if (times[j] > 1e-7) {
            uses.push_back({&fillings_[j], times[j]});
        }
    }
    return uses;
}

}  // namespace hemline
