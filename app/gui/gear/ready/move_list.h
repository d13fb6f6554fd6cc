#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/plan/make_ready/make_ready.h"

#include <QSet>
#include <QString>

#include <vector>

namespace app {

/// The moves of a make-ready plan, and which of them were carried out. Ticks are for whoever carries; the
/// record learns of kit aboard by the launch check.
class MoveList {
public:
    enum class Ticked { Now, Before, NotInPlan };

    void setPlan(const core::MakeReadyPlan& plan);
    Ticked tick(const QString& code);
    void toggle(const QString& code);

    int done() const { return static_cast<int>(m_done.size()); }
    int total() const { return static_cast<int>(m_plan.moves.size()); }
    bool holds(const QString& code) const;
    /// The boat that the item goes to; empty when it is in no move.
    QString goesTo(const QString& code) const;

    /// Trip by trip, a heading with how many are done over each.
    std::vector<ListRow> lines() const;

private:
    core::MakeReadyPlan m_plan;
    QSet<QString> m_done;
};

/// The boats left out first, each with what is short.
std::vector<ListRow> linesOf(const std::vector<core::BoatPlan>& boats);

} // namespace app
