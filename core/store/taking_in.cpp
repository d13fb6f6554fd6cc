#include "core/store/taking_in.h"

#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

#include <algorithm>

namespace core {
namespace {

void putPrivateCells(Database& own, Database& other, const Fact& fact) {
    if (privateTable::isErased(own, fact.id)) return;
    if (privateTable::isNotHere(other, fact.id)) privateTable::noteNotHere(own, fact.id);
    const auto cells = privateTable::of(other, fact.id);
    if (cells.empty()) return;
    const auto sealed = sealedCells(*factTable::bodyOf(fact));
    for (const PrivateCell& cell : cells)
        if (std::any_of(sealed.begin(), sealed.end(),
                        [&](const SealedCell& each) { return each.column == cell.column; }))
            privateTable::put(own, fact.id, {cell});
}

/// With the fact, so that there is none without what stands beside it, nor the other way round.
void putBeside(Database& own, Database& other, const Fact& fact) {
    if (mayHoldPrivateCells(fact)) putPrivateCells(own, other, fact);
    if (fact.kind != PhotoAdded::kind) return; // the only one to be read here
    const auto body = factTable::bodyOf(fact);
    const auto* photo = body ? std::get_if<PhotoAdded>(&*body) : nullptr;
    if (photo == nullptr || photoTable::bytesOf(own, photo->sha256)) return;
    if (const auto bytes = photoTable::bytesOf(other, photo->sha256))
        photoTable::keep(own, photo->sha256, *bytes);
}

/// Whether the tables are made of all facts at the end, and not of each fact as it comes.
bool isMadeAnew(Database& own, const OtherFacts& news) {
    if (news.isRenamed() || !news.cellsOfKnown.empty()) return true;
    // Rows that have newer facts here would each be made of all their facts, again and again.
    const std::int64_t many = news.ownFacts / 4;
    if (news.count() <= many) return false;
    auto facts = news.facts();
    const auto newest = factTable::newest(own);
    const auto oldest = facts.next();
    return oldest && newest && oldest->stamp() < newest->stamp();
}

} // namespace

std::int64_t factsToApply(Database& own, const OtherFacts& news) {
    return news.count() + (isMadeAnew(own, news) ? news.ownFacts : 0);
}

void takeIn(Database& own, const OtherFacts& news) {
    const bool madeAnew = isMadeAnew(own, news);
    auto facts = news.facts();
    while (const auto fact = facts.next()) {
        factTable::insert(own, *fact);
        putBeside(own, *news.other, *fact);
        if (!madeAnew) apply(own, *fact);
    }
    for (const auto& [fact, cells] : news.cellsOfKnown)
        privateTable::putWhatWasNotHere(own, fact, cells);
    if (madeAnew) rebuildTables(own, own);
}

} // namespace core
