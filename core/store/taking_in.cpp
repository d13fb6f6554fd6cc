#include "core/store/taking_in.h"

#include "core/base/error_code.h"
#include "core/store/fact_table.h"
#include "core/store/ledger.h"
#include "core/store/photo_table.h"
#include "core/store/private_table.h"

#include <algorithm>

namespace core {

TakingIn::TakingIn(Database& own, const OtherFacts& news)
    : m_own(own)
    , m_news(news)
    , m_isMadeAnew(news.isRenamed || !news.cellsOfKnown.empty()) {}

/// With the fact, so that there is none without what stands beside it, nor the other way round.
void TakingIn::putBeside(const Fact& fact) {
    if (mayHoldPrivateCells(fact)) putPrivateCells(fact);
    if (fact.kind != PhotoAdded::kind) return; // the only one to be read here
    const auto body = factTable::bodyOf(fact);
    const auto* photo = body ? std::get_if<PhotoAdded>(&*body) : nullptr;
    if (photo == nullptr || photoTable::bytesOf(m_own, photo->sha256)) return;
    if (const auto bytes = photoTable::bytesOf(*m_news.other, photo->sha256))
        photoTable::keep(m_own, photo->sha256, *bytes);
}

void TakingIn::putPrivateCells(const Fact& fact) {
    if (privateTable::isErased(m_own, fact.id)) return;
    if (privateTable::isNotHere(*m_news.other, fact.id)) privateTable::noteNotHere(m_own, fact.id);
    const auto cells = privateTable::of(*m_news.other, fact.id);
    if (cells.empty()) return;
    const auto sealed = sealedCells(*factTable::bodyOf(fact));
    for (const PrivateCell& cell : cells)
        if (std::any_of(sealed.begin(), sealed.end(),
                        [&](const SealedCell& each) { return each.column == cell.column; }))
            privateTable::put(m_own, fact.id, {cell});
}

void TakingIn::put(const Fact& fact) {
    factTable::insert(m_own, fact);
    putBeside(fact);
    if (!m_isMadeAnew) apply(m_own, fact);
}

void TakingIn::all() {
    // Rows that have newer facts here would each be made of all their facts, again and again.
    const auto newest = factTable::newest(m_own);
    const std::int64_t many = m_news.ownFacts / 4;
    auto first = m_news.facts();
    const auto oldest = m_news.count() > many ? first.next() : std::nullopt;
    m_isMadeAnew = m_isMadeAnew || (oldest && newest && oldest->stamp() < newest->stamp());
    auto facts = m_news.facts();
    while (const auto fact = facts.next())
        put(*fact);
    for (const auto& [fact, cells] : m_news.cellsOfKnown)
        privateTable::putWhatWasNotHere(m_own, fact, cells);
    if (m_isMadeAnew) rebuildTables(m_own, m_own);
}

} // namespace core
