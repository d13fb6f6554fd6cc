// Goals 1 and 2 against GLPK (the glpsol program of Debian's glpk-utils), which shares no code with CBC. The
// model is another one too: a column for each item and each line that takes it, without classes or groups.
#include "core/plan/make_ready/make_ready.h"
#include "tests/core/plan/make_ready/random_tasks.h"
#include "tests/support/scratch_folder.h"

#include <fmt/format.h>

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <map>

namespace {

using core::MakeReadyTask;

/// The model as CPLEX-LP text. Boats b, other lines z, items u at lines.
class ItemModel {
public:
    explicit ItemModel(const MakeReadyTask& task) {
        std::map<std::string, std::vector<std::size_t>> ofType;
        for (std::size_t i = 0; i < task.kit.size(); ++i)
            ofType[task.kit[i].kitType].push_back(i);
        m_linesOfItem.resize(task.kit.size());
        int number = 0;
        for (std::size_t b = 0; b < task.boats.size(); ++b) {
            const std::string boat = fmt::format("b{}", b);
            m_binaries += ' ' + boat + '\n';
            m_weight += fmt::format(" + {} {}\n", task.boats[b].priority, boat);
            for (const core::ManifestLine& line : task.boats[b].lines) {
                std::string filled = boat;
                if (!line.required) {
                    filled = fmt::format("z{}", number);
                    m_binaries += ' ' + filled + '\n';
                    m_others += fmt::format(" + {}\n", filled);
                    m_rows += fmt::format(" {} - {} <= 0\n", filled, boat);
                }
                std::vector<std::string> types = line.substitutes;
                types.push_back(line.kitType);
                for (const std::string& type : types)
                    for (const std::size_t item : ofType[type]) {
                        const std::string use = fmt::format("u{}_{}", item, number);
                        m_rows += fmt::format(" + {}\n", use);
                        m_linesOfItem[item] += fmt::format(" + {}\n", use);
                    }
                m_rows += fmt::format(" - {} {} = 0\n", line.quantity, filled);
                ++number;
            }
        }
        for (const std::string& uses : m_linesOfItem)
            if (!uses.empty()) m_rows += uses + " <= 1\n";
    }

    double mostWeight() const { return solve(m_weight, {}); }
    double mostOthers(double weight) const {
        return solve(m_others,
                     fmt::format("{} >= {}\n", m_weight, weight - 0.25)); // priorities are whole here
    }

private:
    double solve(const std::string& objective, const std::string& row) const {
        const support::ScratchFolder folder;
        const std::string model = folder / "model.lp";
        const std::string told = folder / "told.txt";
        std::ofstream(model) << "Maximize\n goal:\n"
                             << objective << "Subject To\n"
                             << row << m_rows << "Binary\n"
                             << m_binaries << "End\n";
        const int failed = std::system(
            fmt::format("glpsol --lp '{}' --cuts --fpump --tmlim 60 -o '{}' >/dev/null", model, told)
                .c_str());
        std::ifstream file(told);
        const std::string text{std::istreambuf_iterator<char>(file), {}};
        const auto at = text.find("Objective:  goal = ");
        EXPECT_EQ(failed, 0);
        EXPECT_NE(text.find("INTEGER OPTIMAL"), std::string::npos);
        return at == std::string::npos ? -1 : std::atof(text.c_str() + at + 19);
    }

    std::string m_weight, m_others, m_rows, m_binaries;
    std::vector<std::string> m_linesOfItem;
};

core::MakeReadyPlan provenPlan(MakeReadyTask& task) {
    task.seconds = 60;
    auto plan = core::planMakeReady(task);
    EXPECT_TRUE(plan.proven());
    return plan;
}

class District : public testing::TestWithParam<std::pair<unsigned, bool>> {};

TEST_P(District, hasTheBoatsThatGlpkCompletes) {
    MakeReadyTask task = support::RandomTasks(GetParam().first).fleet(30, 5, 10, GetParam().second);
    EXPECT_NEAR(ItemModel(task).mostWeight(), provenPlan(task).goals.priorityWeight, 1e-6);
}
INSTANTIATE_TEST_SUITE_P(MakeReady, District, testing::Values(std::pair(1U, false), std::pair(2U, true)));

class FewBoats : public testing::TestWithParam<std::pair<unsigned, bool>> {};

/// GLPK needs minutes to prove goal 2 of a whole district.
TEST_P(FewBoats, haveTheLinesFilledThatGlpkFills) {
    MakeReadyTask task = support::RandomTasks(GetParam().first).fleet(8, 2, 10, GetParam().second);
    const auto plan = provenPlan(task);
    const ItemModel model(task);
    EXPECT_NEAR(model.mostWeight(), plan.goals.priorityWeight, 1e-6);
    EXPECT_NEAR(model.mostOthers(plan.goals.priorityWeight), plan.goals.otherLines, 1e-6);
}
INSTANTIATE_TEST_SUITE_P(MakeReady, FewBoats,
                         testing::Values(std::pair(1U, false), std::pair(2U, true), std::pair(3U, true)));

} // namespace
