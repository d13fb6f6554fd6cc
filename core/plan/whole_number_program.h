#pragma once

#include <utility>
#include <vector>

namespace core {

/// A sum of columns: column and factor.
using Terms = std::vector<std::pair<int, double>>;

enum class Aim { Most, Least };

/// A mixed-integer program whose columns run from 0 to an upper end. Rows may be added between two
/// questions. Solved by CBC, in silence.
class WholeNumberProgram {
public:
    struct Row {
        Terms terms;
        double low;
        double high;
    };

    int addColumn(double upper, bool whole);
    void addRow(Terms terms, double low, double high);

    struct Answer {
        std::vector<double> values; ///< by column; empty when nothing was found in time
        double bound = 0;           ///< no solution is better
        bool proven = false;        ///< the values are as good as any
    };
    /// `objective` must be whole in every solution: solutions that differ by less than 1 are held to be
    /// equally good. `start`: values of all whole columns in a solution that is known, or empty.
    Answer solve(const Terms& objective, Aim aim, double seconds, const std::vector<double>& start) const;

    int columns() const { return static_cast<int>(m_upper.size()); }

private:
    std::vector<double> m_upper;
    std::vector<bool> m_whole;
    std::vector<Row> m_rows;
};

} // namespace core
