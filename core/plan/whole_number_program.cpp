#include "core/plan/whole_number_program.h"

#include <CbcModel.hpp>
#include <CbcSolver.hpp>
#include <CoinPackedMatrix.hpp>
#include <OsiClpSolverInterface.hpp>

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <string>

namespace core {
namespace {

constexpr double allButOne = 0.999;

/// CBC reckons its limit in processor time unless it is told, and it tells only the model that it is given:
/// here are the ones that it makes from it.
int goByTheClock(CbcModel* model, int) {
    model->setUseElapsedTime(true);
    return 0;
}

CoinPackedMatrix matrixOf(int columns, const std::vector<WholeNumberProgram::Row>& rows) {
    CoinPackedMatrix matrix(false, 0, 0);
    matrix.setDimensions(0, columns);
    for (const auto& row : rows) {
        CoinPackedVector entries;
        for (const auto& [column, factor] : row.terms)
            entries.insert(column, factor);
        matrix.appendRow(entries);
    }
    return matrix;
}

void run(CbcModel& model, double seconds) {
    const std::string limit = fmt::format("{:.3f}", std::max(seconds, 0.001));
    const std::string gap = fmt::format("{}", allButOne);
    // This CBC's preprocessing loses solutions and then calls a worse one proven; without it, it does not.
    const char* words[] = {"plan",      "-log",       "0",           "-slog",     "0",    "-preprocess",
                           "off",       "-seconds",   limit.c_str(), "-ratioGap", "0",    "-allowableGap",
                           gap.c_str(), "-increment", gap.c_str(),   "-solve",    "-quit"};
    CbcSolverUsefulData data;
    data.noPrinting_ = true;
    CbcMain0(model, data);
    model.setUseElapsedTime(true);
    CbcMain1(static_cast<int>(std::size(words)), words, model, goByTheClock, data);
}

} // namespace

int WholeNumberProgram::addColumn(double upper, bool whole) {
    m_upper.push_back(upper);
    m_whole.push_back(whole);
    return columns() - 1;
}

void WholeNumberProgram::addRow(Terms terms, double low, double high) {
    m_rows.push_back({std::move(terms), low, high});
}

WholeNumberProgram::Answer WholeNumberProgram::solve(const Terms& objective, Aim aim, double seconds,
                                                     const std::vector<double>& start) const {
    const double sign = aim == Aim::Most ? -1 : 1; // CBC is only asked for the least
    std::vector<double> costs(m_upper.size(), 0.0), low, high;
    for (const auto& [column, factor] : objective)
        costs[column] += sign * factor;
    for (const Row& row : m_rows) {
        low.push_back(row.low);
        high.push_back(row.high);
    }
    OsiClpSolverInterface solver;
    solver.messageHandler()->setLogLevel(0);
    solver.loadProblem(matrixOf(columns(), m_rows), nullptr, m_upper.data(), costs.data(), low.data(),
                       high.data());
    // Names that are not given, only asked for: with given ones this CBC breaks off.
    std::vector<std::pair<std::string, double>> begin;
    for (int column = 0; column < columns(); ++column) {
        if (!m_whole[column]) continue;
        solver.setInteger(column);
        if (!start.empty()) begin.emplace_back(solver.getColName(column), start[column]);
    }
    CbcModel model(solver);
    model.setLogLevel(0);
    model.setMIPStart(begin);
    run(model, seconds);

    Answer answer;
    answer.bound = sign * model.getBestPossibleObjValue();
    const double* solution = model.bestSolution();
    if (!solution) return answer;
    answer.values.assign(solution, solution + columns());
    double value = 0;
    for (const auto& [column, factor] : objective)
        value += factor * solution[column];
    answer.proven = model.isProvenOptimal() || std::abs(answer.bound - value) < allButOne;
    if (model.isProvenOptimal()) answer.bound = value;
    return answer;
}

} // namespace core
