#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/service_round.h"
#include "core/register/kit_type.h"

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace app {

/// One thing shown at the bench.
struct BenchScan {
    std::string text;    ///< as it was scanned
    core::ItemName item; ///< empty: it names no kit of this club
    std::string kitType;
    std::string size;
    bool failed = false;
};

/// What was recorded of a round: those that passed, and those that failed.
struct BenchOutcome {
    core::ServiceRound passed;
    core::ServiceRound failed;
};

/// A service round at work: what was shown so far, and what came of it. A plain value.
class BenchRound {
public:
    /// False: it is there already, and counts once.
    bool add(const BenchScan& scan);
    void takeBackLast();
    /// From passed to failed and back.
    void toggle(const QString& item); ///< by id
    void clear() { m_scans.clear(); }

    const std::vector<BenchScan>& scans() const { return m_scans; }
    std::vector<std::string> textsOf(bool failed) const;
    int countOf(bool failed, const std::vector<core::KitType>& kitTypes, const QString& rule) const;
    /// Failed apart, then passed, then what the rule does not fit.
    std::vector<ListRow> lines(const std::vector<core::KitType>& kitTypes, const QString& rule) const;

private:
    std::vector<BenchScan> m_scans;
};

/// Rules that are fulfilled by a record, each name once, in order.
QStringList recordedRulesOf(const std::vector<core::KitType>& kitTypes);
std::vector<ListRow> linesOf(const BenchOutcome& outcome);
QString summaryOf(const BenchOutcome& outcome);
QString reasonOf(core::ServiceRound::Refusal why);

} // namespace app
