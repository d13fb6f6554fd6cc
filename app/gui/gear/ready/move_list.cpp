#include "app/gui/gear/ready/move_list.h"

#include "app/text/make_ready_sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct MoveListText {
    Q_DECLARE_TR_FUNCTIONS(MakeReady)
};

bool isOfTrip(const core::KitMove& move, const core::KitMove& first) {
    return move.from == first.from && move.to == first.to;
}

ListRow boatRow(const core::BoatPlan& boat) {
    const QString name = text(boat.boat);
    if (boat.asksNothing)
        return plainRow(name, Mark::Look, MoveListText::tr("nothing is asked"), name, conditionInWords(boat));
    return boat.complete
               ? plainRow(name, Mark::Found, MoveListText::tr("can be made complete"), name,
                          conditionInWords(boat))
               : plainRow(name, Mark::Look, MoveListText::tr("left out"), name, conditionInWords(boat));
}

} // namespace

std::vector<ListRow> linesOf(const std::vector<core::BoatPlan>& boats) {
    std::vector<ListRow> rows;
    std::transform(boats.begin(), boats.end(), std::back_inserter(rows), boatRow);
    std::stable_partition(rows.begin(), rows.end(),
                          [](const ListRow& row) { return row.mark == Mark::Look; });
    return rows;
}

void MoveList::setPlan(const core::MakeReadyPlan& plan) {
    m_plan = plan;
    m_done.clear();
}

bool MoveList::holds(const QString& code) const {
    return std::any_of(m_plan.moves.begin(), m_plan.moves.end(),
                       [&](const core::KitMove& move) { return move.item.id == code.toStdString(); });
}

QString MoveList::goesTo(const QString& code) const {
    const auto found = std::find_if(m_plan.moves.begin(), m_plan.moves.end(), [&](const core::KitMove& move) {
        return move.item.id == code.toStdString();
    });
    return found == m_plan.moves.end() ? QString() : text(found->to);
}

MoveList::Ticked MoveList::tick(const QString& code) {
    if (!holds(code)) return Ticked::NotInPlan;
    if (m_done.contains(code)) return Ticked::Before;
    m_done.insert(code);
    return Ticked::Now;
}

void MoveList::toggle(const QString& code) {
    if (tick(code) == Ticked::Before) m_done.remove(code);
}

std::vector<ListRow> MoveList::lines() const {
    std::vector<ListRow> rows;
    for (auto trip = m_plan.moves.begin(); trip != m_plan.moves.end();) {
        const auto end = std::find_if_not(trip, m_plan.moves.end(),
                                          [&](const core::KitMove& move) { return isOfTrip(move, *trip); });
        const auto done = std::count_if(
            trip, end, [&](const core::KitMove& move) { return m_done.contains(text(move.item.id)); });
        rows.push_back(headingRow(QStringLiteral("trip %1 %2").arg(inWords(trip->from), text(trip->to)),
                                  MoveListText::tr("%1 → %2").arg(inWords(trip->from), text(trip->to)),
                                  MoveListText::tr("%1 of %2").arg(done).arg(end - trip)));
        for (; trip != end; ++trip) {
            const bool isDone = m_done.contains(text(trip->item.id));
            const QString inPlaceOf =
                trip->forKitType == trip->kitType
                    ? QString()
                    : MoveListText::tr("in the place of: %1").arg(text(trip->forKitType));
            rows.push_back(plainRow(text(trip->item.id), isDone ? Mark::Found : Mark::StillToFind,
                                    isDone ? MoveListText::tr("done") : MoveListText::tr("to carry"),
                                    text(trip->kitType), inPlaceOf, trip->item));
        }
    }
    return rows;
}

} // namespace app
