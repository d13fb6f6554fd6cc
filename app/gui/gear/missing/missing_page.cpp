#include "app/gui/gear/missing/missing_page.h"

#include "app/gui/camera/code_capture.h"
#include "app/gui/gear/kit/write_off_choice.h"
#include "app/gui/gear/missing/missing_words.h"
#include "app/gui/printout/paper_button.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/page_scroll.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/paper/lists/club_lists.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace app {

MissingPage::MissingPage(GearTools tools, QWidget* parent)
    : GearPage(std::move(tools), "missingPage", parent)
    , m_summary(wordsLabel(this, "heading", "missingSummaryLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_one(new QWidget(this))
    , m_name(wordsLabel(m_one, "heading", "missingNameLabel"))
    , m_chain(new RowListModel(this))
    , m_chainList(new RowList(*m_chain, m_one))
    , m_next(wordsLabel(m_one, "remark", "missingNextLabel"))
    , m_writeOff(new WriteOffChoice("writeOff", m_one))
    , m_stocktakes(new ChoiceBox(this))
    , m_begin(wordsButton(this, tr("Begin a stocktake"), "beginStocktakeButton"))
    , m_code(new QLineEdit(this)) {
    build();
    connectParts();
    choose({});
}

void MissingPage::build() {
    m_list->setObjectName("missingList");
    m_list->setAccessibleName(tr("what is missing, longest first"));
    auto* body = new QHBoxLayout;
    body->setSpacing(4 * spaceUnit);
    body->addWidget(m_list, 10);
    body->addWidget(new PageScroll(buildChain(), this), 12);
    QVBoxLayout& layout = column(2 * spaceUnit);
    auto* head = new QHBoxLayout;
    head->addWidget(m_summary, 1);
    head->addWidget(listButton([](const core::Club& club, core::CalendarDay today) {
        return readList(club, ClubList::Missing, today);
    }));
    layout.addLayout(head);
    layout.addLayout(body, 1);
    layout.addWidget(saidLabel("missingSaidLabel"));
    layout.addLayout(buildFoot());
}

QWidget* MissingPage::buildChain() {
    m_chainList->setObjectName("missingChain");
    m_chainList->setAccessibleName(tr("how it was lost from sight, oldest first"));
    auto* layout = new QVBoxLayout(m_one);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_name);
    layout->addWidget(m_chainList, 1);
    layout->addWidget(m_next);
    layout->addWidget(m_writeOff);
    return m_one;
}

QLayout* MissingPage::buildFoot() {
    m_stocktakes->setObjectName("foundStocktakeBox");
    m_stocktakes->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    m_code->setObjectName("foundCodeEdit");
    m_code->setAccessibleName(tr("tag code of what turned up"));
    m_code->setPlaceholderText(tr("scan it, or type its code"));
    m_code->setFont(fontOf(TextRole::Code));
    roomForHint(*m_code);
    auto* foot = new FlowLayout;
    addWithWord(*foot, tr("Turned up at"), m_stocktakes);
    foot->addWidget(m_begin);
    foot->addExpanding(m_code);
    return foot;
}

void MissingPage::connectParts() {
    connect(m_list, &RowList::rowPressed, this, &MissingPage::choose);
    connect(m_list->selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this] { choose(m_list->currentKey()); });
    connect(m_writeOff, &WriteOffChoice::writeOffPressed, this, &MissingPage::writeOff);
    // While it is asked once more, that has the room: whom to ask is known by then.
    connect(m_writeOff, &WriteOffChoice::asked, m_next, &QWidget::setHidden);
    connect(m_begin, &QPushButton::clicked, this, [this] { tools().showPage("stocktake"); });
    auto* capture = new CodeCapture(*this, *m_code);
    connect(capture, &CodeCapture::codeTyped, this,
            [this](const QString& text) { found(text, core::SeenBy::Typed); });
}

void MissingPage::refresh() {
    read(
        [](core::Club& club) {
            Read read{club.answers().missingItems(), club.checks().unfinished()};
            std::erase_if(read.stocktakes,
                          [](const core::OpenCheck& check) { return check.phase != core::Phase::Stocktake; });
            return read;
        },
        [this](Read read) { take(std::move(read)); });
}

void MissingPage::take(Read read) {
    m_missing = std::move(read.missing);
    m_summary->setText(summaryOf(m_missing));
    m_lines->setRows(linesOf(m_missing, today()));
    const QString before = m_stocktakes->currentData().toString();
    m_stocktakes->clear();
    for (const core::OpenCheck& check : read.stocktakes)
        m_stocktakes->addItem(text(check.location.name), text(check.check));
    if (read.stocktakes.empty()) m_stocktakes->addItem(tr("no stocktake open"), QString());
    m_stocktakes->setCurrentIndex(std::max(0, m_stocktakes->findData(before)));
    m_begin->setVisible(read.stocktakes.empty());
    choose(m_lines->indexOfKey(m_chosen) >= 0 || m_missing.empty() ? m_chosen
                                                                   : text(m_missing.front().item.id));
    if (const int row = m_lines->indexOfKey(m_chosen); row >= 0) m_list->setCurrentIndex(m_lines->index(row));
}

void MissingPage::choose(const QString& code) {
    const auto item = std::find_if(m_missing.begin(), m_missing.end(),
                                   [&](const auto& each) { return each.item.id == code.toStdString(); });
    m_one->setVisible(item != m_missing.end());
    if (item == m_missing.end()) return;
    if (m_chosen != code) m_writeOff->clear();
    m_chosen = code;
    m_name->setText(QStringLiteral("%1 %2").arg(text(item->kitType), codeInWords(item->item.tag)));
    m_chain->setRows(chainOf(*item, today()));
    m_next->setText(nextStepsOf(*item).join('\n'));
}

bool MissingPage::takeScan(const QString& text, core::SeenBy how) {
    found(text, how);
    return true;
}

/// A sighting in a stocktake: it is then where that stocktake is, and missing no more.
void MissingPage::found(const QString& text, core::SeenBy seenBy) {
    const std::string check = m_stocktakes->currentData().toString().toStdString();
    if (check.empty()) {
        say(tr("No stocktake is open to write it into: begin one of the place where it turned up."), true);
        return;
    }
    const QString place = m_stocktakes->currentText();
    ask(
        [check, text = text.toStdString(), moment = tools().time(), seenBy](core::Club& club) {
            return club.checks().scan(check, core::ScannedText::typed(text), seenBy, moment);
        },
        [this, place, text](const core::Result<core::Scanned>& scan) {
            if (!scan) return sayError(scan.error());
            const auto wasMissing = [&](const core::MissingItem& item) {
                return item.item.id == scan->item.id;
            };
            const QString thing =
                QStringLiteral("%1 %2").arg(app::text(scan->name), codeInWords(scan->item.tag));
            if (std::any_of(m_missing.begin(), m_missing.end(), wasMissing)) {
                tools().sounds.play(Sound::NewAndFine);
                say(tr("Found: %1, at %2. Look whether it is fit for use before it goes back.")
                        .arg(thing, place));
            } else if (scan->what == core::Scanned::What::NewItem ||
                       scan->what == core::Scanned::What::SeenBefore) {
                say(tr("%1 was not missing; it is now seen at %2.").arg(thing, place));
            } else {
                tools().sounds.play(Sound::LookAtThis);
                say(tr("%1 is not this club's kit.").arg(codeInWords(text.toStdString())), true);
            }
            refresh();
        });
}

void MissingPage::writeOff(const QString& why) {
    write([code = m_chosen.toStdString(), why = why.toStdString()](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.kit().writeOff(code, why, by, moment); },
          [this, thing = m_name->text()](core::Done) {
              say(tr("Written off: %1. It counts nowhere from now on; its history stays.").arg(thing));
              m_chosen.clear();
              refresh();
          });
}

} // namespace app
