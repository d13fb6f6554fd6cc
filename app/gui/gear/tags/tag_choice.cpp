#include "app/gui/gear/tags/tag_choice.h"

#include "app/paper/tag_sheet.h"
#include "app/text/text.h"

#include <QCoreApplication>

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

} // namespace

void TagChoice::setTags(std::vector<core::TagLabel> tags) {
    m_tags = std::move(tags);
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
        const QString owner = text(tag.owner);
        lines.push_back(plainRow(code, isOut ? Mark::NotAsked : Mark::Found,
                                 isOut ? TagChoiceText::tr("left out") : TagChoiceText::tr("to print"),
                                 text(tag.name),
                                 isOut && owner.isEmpty() ? TagChoiceText::tr("left out")
                                 : isOut                  ? TagChoiceText::tr("%1 · left out").arg(owner)
                                                          : owner,
                                 {tag.code, tag.code})); // not only of kit
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
