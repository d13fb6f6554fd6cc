#include "app/gui/gear/ready/move_list.h"

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

QString shortInWords(const std::vector<core::ShortLine>& lines) {
    QStringList words;
    for (const core::ShortLine& line : lines)
        words << MoveListText::tr("%1 (%2 of %3)").arg(text(line.kitType)).arg(line.have).arg(line.wanted);
    return listed(words);
}

QString otherInWords(const core::BoatPlan& boat) {
    return boat.unfilledOther.empty()
               ? QString()
               : MoveListText::tr("Not required, and short: %1.").arg(shortInWords(boat.unfilledOther));
}

QString leftOutInWords(const core::BoatPlan& boat) {
    const QString words = MoveListText::tr("Left out, short of: %1.").arg(shortInWords(boat.shortLines));
    const QString other = otherInWords(boat);
    return other.isEmpty() ? words : words + QLatin1Char(' ') + other;
}

ListRow boatRow(const core::BoatPlan& boat) {
    const QString name = text(boat.boat);
    if (!boat.complete)
        return plainRow(name, Mark::Look, MoveListText::tr("left out"), name, leftOutInWords(boat));
    const QString other = otherInWords(boat);
    return plainRow(name, Mark::Found, MoveListText::tr("can be made complete"), name,
                    other.isEmpty() ? MoveListText::tr("Can be made complete.")
                                    : MoveListText::tr("Can be made complete. %1").arg(other));
}

} // namespace

QString inWords(const core::Location& at) {
    if (at.isBoat()) return MoveListText::tr("aboard %1").arg(text(at.name));
    return at.name.empty() ? MoveListText::tr("place not known") : text(at.name);
}

QString answerInWords(const core::MakeReadyPlan& plan) {
    const auto complete = static_cast<int>(std::count_if(
        plan.boats.begin(), plan.boats.end(), [](const core::BoatPlan& boat) { return boat.complete; }));
    const auto moves = static_cast<int>(plan.moves.size());
    if (plan.boats.empty()) return MoveListText::tr("No boat is in to be made ready.");
    const QString boats =
        MoveListText::tr("%1 of %2 boats can be made complete").arg(complete).arg(plan.boats.size());
    if (moves == 0) return MoveListText::tr("%1; nothing has to be moved.").arg(boats);
    return MoveListText::tr("%1, with %2.")
        .arg(boats, counted(moves, QT_TRANSLATE_N_NOOP("Words", "%n move"),
                            QT_TRANSLATE_N_NOOP("Words", "%n moves")));
}

QString goalsInWords(const core::MakeReadyPlan& plan) {
    QStringList words;
    if (plan.proven())
        words << MoveListText::tr(
            "Best possible: no other plan makes more, or more important, boats complete.");
    else if (plan.exactGoals == 1)
        words << MoveListText::tr(
                     "No other plan makes more, or more important, boats complete. Of the lines that are "
                     "not required it fills %1; no plan fills more than %2.")
                     .arg(plan.goals.otherLines)
                     .arg(plan.boundOtherLines);
    else
        words << MoveListText::tr(
                     "The time ran out. The boats' priorities add up to %1; no plan reaches more than %2.")
                     .arg(numberInWords(plan.goals.priorityWeight), numberInWords(plan.boundPriorityWeight));
    if (!plan.boatsOut.empty())
        words << MoveListText::tr("Out, and not planned: %1.").arg(listed(plan.boatsOut));
    if (!plan.notPlaced.empty())
        words << counted(
            static_cast<int>(plan.notPlaced.size()),
            QT_TRANSLATE_N_NOOP("Words", "%n sound item is left out: nobody knows where it is."),
            QT_TRANSLATE_N_NOOP("Words", "%n sound items are left out: nobody knows where they are."));
    return words.join(QLatin1Char(' '));
}

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
