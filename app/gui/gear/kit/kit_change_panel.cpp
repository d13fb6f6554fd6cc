#include "app/gui/gear/kit/kit_change_panel.h"

#include "app/gui/gear/register/register_rows.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"
#include "core/club/club_register.h"

#include <QBoxLayout>
#include <QPushButton>

#include <algorithm>

namespace app {
namespace {

constexpr int heightOfPart = 84, heightOfParts = 150; ///< two of them, and a bit of the next

/// "made 2023-02, serial BA-31"
QString partInShort(const core::Cells& part) {
    const core::Sheet& sheet = core::sheet(core::SheetId::Parts);
    QStringList words;
    for (std::size_t at = 2; at < part.size(); ++at)
        if (!part[at].empty())
            words << columnInWords(sheet.id, sheet.columns[at].name) + ' ' + text(part[at]);
    return words.join(QStringLiteral(", "));
}

} // namespace

KitChangePanel::KitChangePanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "kitChangePanel", parent)
    , m_row(new RowPanel(tools(), "kitChange", this))
    , m_lines(new RowListModel(this))
    , m_parts(new RowList(*m_lines, this))
    , m_back(wordsButton(m_row, tr("Back"), "kitChangeBackButton"))
    , m_newPart(wordsButton(m_row, tr("New part…"), "kitNewPartButton")) {
    build();
    connect(m_back, &QPushButton::clicked, this, &KitChangePanel::left);
    connect(m_newPart, &QPushButton::clicked, this, &KitChangePanel::showNewPart);
    connect(m_parts, &RowList::rowPressed, this, &KitChangePanel::showPart);
    connect(m_row, &RowPanel::changed, this, &KitChangePanel::afterWrite);
    connect(m_row, &RowPanel::discarded, this, [this] {
        if (m_row->sheet() == core::SheetId::Parts) showItem();
    });
}

void KitChangePanel::build() {
    m_parts->setObjectName("kitPartsList");
    m_parts->setAccessibleName(tr("parts of the item"));
    m_row->buttons()->insertWidget(0, m_back);
    m_row->buttons()->insertWidget(1, m_newPart);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_row, 1);
    layout->addWidget(m_parts);
}

void KitChangePanel::open(const std::string& id) {
    m_id = id;
    refresh();
}

void KitChangePanel::close() {
    m_row->close();
}

void KitChangePanel::refresh() {
    read(
        [id = m_id](core::Club& club) {
            Rows rows{club.register_().row(core::SheetId::Items, {id}), {}};
            for (const core::Cells& part : club.register_().rows(core::SheetId::Parts))
                if (part[0] == id) rows.parts.push_back(part);
            return rows;
        },
        [this](Rows rows) { take(std::move(rows)); });
}

void KitChangePanel::take(Rows rows) {
    m_rows = std::move(rows);
    if (!m_rows.item) {
        emit left();
        return;
    }
    std::vector<ListRow> lines;
    for (const core::Cells& part : m_rows.parts) {
        ListRow line = plainRow(keyOfRow(core::SheetId::Parts, part), Mark::NotAsked, {},
                                withCapital(text(part[1])), partInShort(part));
        line.isPressable = true;
        line.isLitByMouse = true;
        lines.push_back(std::move(line));
    }
    m_lines->setRows(lines);
    m_parts->setFixedHeight(std::min(heightOfParts, heightOfPart * static_cast<int>(lines.size())));
    m_parts->setVisible(!lines.empty());
    showItem();
}

void KitChangePanel::showItem() {
    const core::Cells& item = *m_rows.item;
    m_row->open(core::SheetId::Items, item,
                tr("%1 %2").arg(withCapital(text(item[1])), codeInWords(item[0])));
    m_row->takeKeyboard();
}

void KitChangePanel::showPart(const QString& key) {
    for (const core::Cells& part : m_rows.parts)
        if (keyOfRow(core::SheetId::Parts, part) == key)
            m_row->open(core::SheetId::Parts, part, tr("Its part: %1").arg(text(part[1])));
    m_row->takeKeyboard();
}

void KitChangePanel::showNewPart() {
    m_row->beginNew(core::SheetId::Parts, {{"code", m_id}}, tr("A new part of it"));
    m_row->takeKeyboard();
}

void KitChangePanel::afterWrite(const QString& sentence) {
    const bool isPart = m_row->sheet() == core::SheetId::Parts;
    emit changed(sentence);
    if (!isPart) {
        emit left();
        return;
    }
    refresh();
    m_row->say(sentence);
}

} // namespace app
