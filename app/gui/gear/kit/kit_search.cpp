#include "app/gui/gear/kit/kit_search.h"

#include "app/text/sentences.h"
#include "app/text/text.h"
#include "core/tag/tag_code.h"

#include <QStringList>

#include <algorithm>
#include <numeric>

namespace app {
namespace {

QString wordsOf(const core::Item& item) {
    QStringList words;
    for (const std::string* cell :
         {&item.id, &item.tag, &item.kitType, &item.size, &item.boat, &item.place, &item.person, &item.maker,
          &item.serial, &item.batch, &item.gtin, &item.note})
        words << text(*cell);
    words << nameInWords(item.state);
    return words.join('\n').toLower();
}

} // namespace

KitSearch::KitSearch(std::vector<core::Item> kit, const QStringList& shown)
    : m_kit(std::move(kit)) {
    m_words.reserve(m_kit.size());
    for (std::size_t i = 0; i < m_kit.size(); ++i)
        m_words.push_back(wordsOf(m_kit[i]) + '\n' + shown.value(static_cast<qsizetype>(i)).toLower());
}

const core::Item* KitSearch::ofCode(const QString& code) const {
    const auto parsed = core::TagCode::parse(code.toStdString());
    if (!parsed) return nullptr;
    const auto found = std::find_if(m_kit.begin(), m_kit.end(), [&](const core::Item& item) {
        return item.tag == parsed->text() || item.id == parsed->text();
    });
    return found == m_kit.end() ? nullptr : &*found;
}

std::vector<std::size_t> KitSearch::find(const QString& typed) const {
    if (const core::Item* one = ofCode(typed)) return {static_cast<std::size_t>(one - m_kit.data())};
    const QStringList words = typed.toLower().split(' ', Qt::SkipEmptyParts);
    std::vector<std::size_t> found;
    for (std::size_t i = 0; i < m_kit.size(); ++i)
        if (std::all_of(words.begin(), words.end(),
                        [&](const QString& word) { return m_words[i].contains(word); }))
            found.push_back(i);
    return found;
}

} // namespace app
