#include "app/gui/gear/kit/kit_search.h"

#include "app/text/sentences.h"
#include "core/tag/tag_code.h"

#include <QStringList>

#include <algorithm>
#include <numeric>

namespace app {
namespace {

QString wordsOf(const core::KitEntry& entry) {
    const core::Item& item = entry.item;
    QStringList words;
    for (const std::string* cell :
         {&item.code, &entry.tag, &item.kitType, &item.size, &item.boat, &item.place, &item.person,
          &item.maker, &item.serial, &item.batch, &item.gtin, &item.note})
        words << QString::fromStdString(*cell);
    words << nameInWords(item.state);
    return words.join('\n').toLower();
}

} // namespace

KitSearch::KitSearch(std::vector<core::KitEntry> kit)
    : m_kit(std::move(kit)) {
    m_words.reserve(m_kit.size());
    for (const core::KitEntry& entry : m_kit)
        m_words.push_back(wordsOf(entry));
}

const core::KitEntry* KitSearch::ofCode(const QString& code) const {
    const auto parsed = core::TagCode::parse(code.toStdString());
    if (!parsed) return nullptr;
    const auto found = std::find_if(m_kit.begin(), m_kit.end(), [&](const core::KitEntry& entry) {
        return entry.tag == parsed->text() || entry.item.code == parsed->text();
    });
    return found == m_kit.end() ? nullptr : &*found;
}

std::vector<std::size_t> KitSearch::find(const QString& typed) const {
    if (const core::KitEntry* one = ofCode(typed)) return {static_cast<std::size_t>(one - m_kit.data())};
    const QStringList words = typed.toLower().split(' ', Qt::SkipEmptyParts);
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < m_kit.size(); ++i)
        if (std::all_of(words.begin(), words.end(),
                        [&](const QString& word) { return m_words[i].contains(word); }))
            found.push_back(i);
    return found;
}

} // namespace app
