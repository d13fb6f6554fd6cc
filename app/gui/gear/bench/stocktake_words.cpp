#include "app/gui/gear/bench/stocktake_words.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <map>

namespace app {
namespace {

struct StocktakeWordsText {
    Q_DECLARE_TR_FUNCTIONS(Stocktake)
};

bool isNotSeen(const core::Finding& finding) {
    return finding.kind == core::FindingKind::Missing && !finding.item.id.empty();
}

QString kitName(const core::Finding& finding) {
    if (finding.kind == core::FindingKind::UnknownTag) return StocktakeWordsText::tr("unknown tag");
    return finding.size.empty()
               ? text(finding.kitType)
               : StocktakeWordsText::tr("%1 (%2)").arg(text(finding.kitType), text(finding.size));
}

/// What is seen at a place that is not its home is no fault there; it is carried home or gets a new one.
QString remarkOf(const core::Finding& finding) {
    if (finding.kind != core::FindingKind::Extra) return reasonOf(finding);
    return finding.boat.empty()
               ? StocktakeWordsText::tr("It has no home in the register: give it one.")
               : StocktakeWordsText::tr("Its home is %1: carry it there, or give it its home here.")
                     .arg(text(finding.boat));
}

std::vector<ListRow> notSeen(const core::CheckAnswer& answer) {
    std::vector<ListRow> rows;
    for (const core::Finding& finding : answer.findings)
        if (isNotSeen(finding))
            rows.push_back(plainRow("open " + text(finding.item.id), Mark::StillToFind,
                                    StocktakeWordsText::tr("still to find"), kitName(finding), {},
                                    finding.item));
    return rows;
}

std::vector<ListRow> toLookAt(const core::CheckAnswer& answer) {
    std::vector<ListRow> rows;
    std::map<std::string, std::size_t> byId;
    for (const core::Finding& finding : answer.findings) {
        if (isNotSeen(finding) || finding.item.id.empty()) continue;
        const auto [at, isNew] = byId.emplace(finding.item.id, rows.size());
        if (isNew)
            rows.push_back(plainRow("item " + text(finding.item.id), Mark::Look,
                                    StocktakeWordsText::tr("look"), kitName(finding), remarkOf(finding),
                                    finding.item));
        else
            rows[at->second].remark += QLatin1Char(' ') + remarkOf(finding);
    }
    return rows;
}

std::vector<ListRow> found(const core::CheckAnswer& answer) {
    std::vector<ListRow> rows;
    for (const core::LineAnswer& line : answer.lines)
        for (const core::LineItem& item : line.items) {
            const bool isLookedAt =
                std::any_of(answer.findings.begin(), answer.findings.end(),
                            [&](const core::Finding& finding) { return finding.item.id == item.item.id; });
            if (!isLookedAt)
                rows.push_back(plainRow("item " + text(item.item.id), Mark::Found,
                                        StocktakeWordsText::tr("found"), text(item.kitType), {}, item.item));
        }
    return rows;
}

} // namespace

std::vector<ListRow> stocktakeRowsOf(const core::CheckAnswer& answer) {
    std::vector<ListRow> all;
    addSection(all, "still to find", StocktakeWordsText::tr("still to find"), notSeen(answer), true);
    addSection(all, "look", StocktakeWordsText::tr("look at this"), toLookAt(answer));
    addSection(all, "found", StocktakeWordsText::tr("found"), found(answer));
    return all;
}

int stillToFindIn(const core::CheckAnswer& answer) {
    return static_cast<int>(std::count_if(answer.findings.begin(), answer.findings.end(), isNotSeen));
}

bool isNothingSeenIn(const core::CheckAnswer& answer) {
    return stillToFindIn(answer) > 0 && found(answer).empty() && toLookAt(answer).empty();
}

QString stocktakeInWords(const core::CheckAnswer& answer) {
    QStringList words;
    const int open = stillToFindIn(answer);
    words << (open ? StocktakeWordsText::tr("%1 still to find").arg(open)
                   : StocktakeWordsText::tr("all found that should be there"));
    words << StocktakeWordsText::tr("%1 found").arg(found(answer).size());
    if (const auto look = toLookAt(answer).size()) words << StocktakeWordsText::tr("%1 to look at").arg(look);
    return StocktakeWordsText::tr("%1: %2.").arg(text(answer.location.name),
                                                 words.join(StocktakeWordsText::tr(", ")));
}

} // namespace app
