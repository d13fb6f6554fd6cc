#include "app/gui/gear/record/verify_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/errors.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_record.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QProgressBar>
#include <QPushButton>
#include <QVBoxLayout>

namespace app {

VerifyPanel::VerifyPanel(GearTools tools, QWidget* parent)
    : GearPart(std::move(tools), "verifyPanel", parent)
    , m_button(wordsButton(this, tr("Check the record"), "verifyButton", true))
    , m_progress(new QProgressBar(this))
    , m_answer(wordsLabel(this, "outcome", "verifyAnswerLabel"))
    , m_head(wordsLabel(this, "footnote", "verifyHeadLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this)) {
    m_progress->setObjectName("verifyProgress");
    m_progress->setAccessibleName(tr("the record is being checked"));
    m_progress->setRange(0, 0); // how long it takes is not known beforehand
    m_progress->setVisible(false);
    m_list->setObjectName("verifyList");
    m_list->setAccessibleName(tr("what does not agree"));
    auto* what = wordsLabel(this, "quiet", "verifyWhatLabel");
    what->setText(
        tr("Each line of the record carries the hash of the line before it. This checks that the chain "
           "holds, that the tables say what the record says, and that the file is sound. It does "
           "not show that what people wrote was true."));
    m_head->setTextInteractionFlags(Qt::TextSelectableByMouse);
    auto* head = new QHBoxLayout;
    head->addWidget(m_button);
    head->addWidget(m_progress, 1);
    head->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, spaceUnit, 0, 0);
    layout->setSpacing(2 * spaceUnit);
    layout->addWidget(what);
    layout->addLayout(head);
    layout->addWidget(m_answer);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_head);
    connect(m_button, &QPushButton::clicked, this, &VerifyPanel::verify);
}

void VerifyPanel::verify() {
    m_button->setEnabled(false);
    m_progress->setVisible(true);
    m_answer->clear();
    m_lines->setRows({});
    read([](core::Club& club) { return club.record().verify(false); },
         [this](const core::Result<core::Verification>& verification) { take(verification); });
}

void VerifyPanel::take(const core::Result<core::Verification>& verification) {
    m_button->setEnabled(true);
    m_progress->setVisible(false);
    m_head->clear();
    if (!verification) {
        m_answer->setText(errorSentence(verification.error()));
        return;
    }
    const QString size =
        tr("%1 of %2")
            .arg(counted(static_cast<int>(verification->facts), QT_TRANSLATE_N_NOOP("Words", "%n line"),
                         QT_TRANSLATE_N_NOOP("Words", "%n lines")),
                 counted(static_cast<int>(verification->machines.size()),
                         QT_TRANSLATE_N_NOOP("Words", "%n machine"),
                         QT_TRANSLATE_N_NOOP("Words", "%n machines")));
    const QString photos =
        verification->photos == 0
            ? QString()
            : tr(" Its photographs weigh %1 kB in the file.").arg((verification->photoBytes + 999) / 1000);
    const int problems = static_cast<int>(verification->problems.size());
    m_answer->setText(problems == 0 ? tr("No fault was found in the record: %1.").arg(size) + photos
                                    : tr("The record is damaged: %1. It has %2.")
                                          .arg(counted(problems, QT_TRANSLATE_N_NOOP("Words", "%n place"),
                                                       QT_TRANSLATE_N_NOOP("Words", "%n places")),
                                               size));
    std::vector<ListRow> rows;
    for (const core::Error& problem : verification->problems)
        rows.push_back(plainRow(QString::number(rows.size()), Mark::Look, tr("look"), errorInWords(problem),
                                placeInWords(problem)));
    m_lines->setRows(rows);
    m_head->setText(tr("The newest hash, to write down on paper: %1").arg(text(verification->head)));
}

} // namespace app
