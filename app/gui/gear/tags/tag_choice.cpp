#include "app/gui/gear/tags/tag_choice.h"

#include "app/paper/tag_sheet.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct TagChoiceText {
    Q_DECLARE_TR_FUNCTIONS(TagChoice)
};

/// The first letter of a tag code is its class: kit, boat, person, shelf of a place.
QString kindOf(const core::TagLabel& tag) {
    if (tag.code.starts_with('B')) return TagChoiceText::tr("boats");
    if (tag.code.starts_with('P')) return TagChoiceText::tr("people");
    if (tag.code.starts_with('S')) return TagChoiceText::tr("places");
    return text(tag.name);
}

QString homeOf(const core::TagLabel& tag) {
    return text(tag.code.starts_with('K') ? tag.owner : tag.name);
}

bool isWorn(const core::TagLabel& tag) {
    return !wornTagInWords(tag.print).isEmpty();
}

/// Whose it is, and what is to be known of it.
QString remarkOn(const core::TagLabel& tag, bool isOut) {
    QStringList remarks;
    if (!tag.owner.empty()) remarks << text(tag.owner);
    if (isOut) remarks << TagChoiceText::tr("left out");
    if (isWorn(tag)) remarks << TagChoiceText::tr("wearing out: %1 of 4").arg(numberInWords(*tag.print));
    return remarks.join(TagChoiceText::tr(" · "));
}

} // namespace

void TagChoice::setTags(std::vector<core::TagLabel> tags) {
    m_tags = std::move(tags);
    std::stable_sort(m_tags.begin(), m_tags.end(), [](const core::TagLabel& a, const core::TagLabel& b) {
        return isWorn(a) && (!isWorn(b) || *a.print < *b.print);
    });
}

bool TagChoice::isShown(const core::TagLabel& tag) const {
    return (m_home.isEmpty() || homeOf(tag) == m_home) && (m_kitType.isEmpty() || kindOf(tag) == m_kitType);
}

void TagChoice::toggle(const QString& code) {
    if (!m_leftOut.remove(code)) m_leftOut.insert(code);
}

void TagChoice::leaveOut(bool all) {
    for (const core::TagLabel& tag : m_tags) {
        if (!isShown(tag)) continue;
        if (all)
            m_leftOut.insert(text(tag.code));
        else
            m_leftOut.remove(text(tag.code));
    }
}

void TagChoice::takeWorn() {
    for (const core::TagLabel& tag : m_tags) {
        if (!isShown(tag)) continue;
        if (isWorn(tag))
            m_leftOut.remove(text(tag.code));
        else
            m_leftOut.insert(text(tag.code));
    }
}

int TagChoice::wornCount() const {
    return static_cast<int>(std::count_if(m_tags.begin(), m_tags.end(), [&](const core::TagLabel& tag) {
        return isShown(tag) && isWorn(tag);
    }));
}

QStringList TagChoice::homes() const {
    QStringList homes;
    for (const core::TagLabel& tag : m_tags)
        homes << homeOf(tag);
    return homes;
}

QStringList TagChoice::kitTypes() const {
    QStringList kinds;
    for (const core::TagLabel& tag : m_tags)
        kinds << kindOf(tag);
    return kinds;
}

std::vector<ListRow> TagChoice::lines() const {
    std::vector<ListRow> lines;
    for (const core::TagLabel& tag : m_tags) {
        if (!isShown(tag)) continue;
        const QString code = text(tag.code);
        const bool isOut = m_leftOut.contains(code);
        lines.push_back(plainRow(code, isOut ? Mark::NotAsked : Mark::Found,
                                 isOut ? TagChoiceText::tr("left out") : TagChoiceText::tr("to print"),
                                 text(tag.name), remarkOn(tag, isOut),
                                 {tag.code, tag.code})); // not only of kit
        lines.back().remarkIsLook = isWorn(tag);
    }
    return lines;
}

std::vector<core::TagLabel> TagChoice::chosen() const {
    std::vector<core::TagLabel> chosen;
    for (const core::TagLabel& tag : m_tags)
        if (isShown(tag) && !m_leftOut.contains(text(tag.code))) chosen.push_back(tag);
    if (m_withControl)
        for (core::TagLabel& tag : controlTags())
            chosen.push_back(std::move(tag));
    return chosen;
}

} // namespace app
