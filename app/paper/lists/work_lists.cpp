#include "app/paper/lists/club_lists.h"

#include "app/text/cautions.h"
#include "app/text/make_ready_sentences.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/plan/make_ready/make_ready.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct WorkListsText {
    Q_DECLARE_TR_FUNCTIONS(Lists)
};

ListLine boatLine(const core::BoatPlan& boat) {
    return {boat.complete && !boat.asksNothing ? Mark::Found : Mark::Look,
            {text(boat.boat), QString(), QString(), QString(), conditionInWords(boat)}};
}

ListLine moveLine(const core::KitMove& move) {
    const QString inPlaceOf = move.forKitType == move.kitType
                                  ? QString()
                                  : WorkListsText::tr("in the place of: %1").arg(text(move.forKitType));
    return {Mark::StillToFind,
            {text(move.to), text(move.kitType), codeCell(move.item), inWords(move.from), inPlaceOf}};
}

} // namespace

ListTable stocktakeTable(const std::vector<core::Item>& kit) {
    ListTable table;
    table.title = WorkListsText::tr("Stocktake");
    table.summary =
        kit.empty() ? WorkListsText::tr("Nothing is to be counted.")
                    : WorkListsText::tr("%1 to count.")
                          .arg(counted(static_cast<int>(kit.size()), QT_TRANSLATE_N_NOOP("Words", "%n item"),
                                       QT_TRANSLATE_N_NOOP("Words", "%n items")));
    table.columns = {WorkListsText::tr("place"), WorkListsText::tr("kit"),   WorkListsText::tr("size"),
                     WorkListsText::tr("owner"), WorkListsText::tr("state"), WorkListsText::tr("serial"),
                     WorkListsText::tr("tag")};
    for (const core::Item& item : kit)
        table.lines.push_back({Mark::StillToFind,
                               {text(item.place), text(item.kitType), text(item.size), text(item.person),
                                nameInWords(item.state), text(item.serial), codeCell(item.name())}});
    table.cautions = {
        WorkListsText::tr("What is missing or written off, and what a boat has out, is not listed. What lies "
                          "here and is not listed has its home elsewhere: note its tag.")};
    return table;
}

ListTable makeReadyTable(const core::MakeReadyPlan& plan) {
    ListTable table;
    table.title = WorkListsText::tr("Make ready");
    table.summary = answerInWords(plan) + QLatin1Char(' ') + goalsInWords(plan);
    table.columns = {WorkListsText::tr("boat"), WorkListsText::tr("kit"), WorkListsText::tr("tag"),
                     WorkListsText::tr("from"), WorkListsText::tr("remark")};
    std::vector<core::BoatPlan> boats = plan.boats;
    std::stable_partition(boats.begin(), boats.end(),
                          [](const core::BoatPlan& boat) { return !boat.complete; });
    for (const core::BoatPlan& boat : boats) {
        table.lines.push_back(boatLine(boat));
        table.needsSomebody = table.needsSomebody || !boat.complete;
        for (const core::KitMove& move : plan.moves)
            if (move.to == boat.boat) table.lines.push_back(moveLine(move));
    }
    table.cautions = {makeReadyCaution(), whoPrevails()};
    return table;
}

} // namespace app
