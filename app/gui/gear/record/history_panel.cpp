#include "app/gui/gear/record/history_panel.h"

#include "app/gui/camera/held_field.h"
#include "app/gui/gear/record/history_rows.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_answers.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace app {

HistoryPanel::HistoryPanel(GearTools tools, QWidget* parent)
    : GearPart(std::move(tools), "historyPanel", parent)
    , m_names(new ChoiceBox(this))
    , m_code(new QLineEdit(this))
    , m_answer(wordsLabel(this, "heading", "historyAnswerLabel"))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this)) {
    build();
    connect(m_names, &QComboBox::activated, this, [this] {
        m_code->clear();
        tell(m_names->currentData().toString());
    });
    connect(m_code, &QLineEdit::returnPressed, this, [this] { tell(m_code->text().trimmed()); });
}

void HistoryPanel::build() {
    m_names->setObjectName("historyNameBox");
    m_code->setObjectName("historyCodeEdit");
    m_code->setFixedWidth(300);
    askForCode(*m_code);
    m_code->setPlaceholderText(tr("type or scan a tag"));
    m_list->setObjectName("historyList");
    m_list->setAccessibleName(tr("what was recorded, newest first"));
    auto* ask = new QHBoxLayout;
    ask->setSpacing(spaceUnit);
    addWithWord(*ask, tr("boat or person"), m_names);
    addWithWord(*ask, tr("or a tag"), m_code);
    m_code->setAccessibleName(tr("tag code of an item, a boat or a person"));
    ask->addStretch(1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, spaceUnit, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addLayout(ask);
    layout->addWidget(m_answer);
    layout->addWidget(m_list, 1);
    m_answer->setText(tr("Choose a boat or a person, or show a tag."));
}

void HistoryPanel::refresh() {
    using Names = std::pair<std::vector<core::Boat>, std::vector<core::Person>>;
    ask(
        [](core::Club& club) {
            return Names{club.register_().boats(), club.register_().people()};
        },
        [this](const Names& names) {
            const QString before = m_names->currentData().toString();
            m_names->clear();
            m_names->addItem(tr("choose"), QString());
            for (const core::Boat& boat : names.first)
                m_names->addItem(text(boat.name), text(boat.name));
            for (const core::Person& person : names.second)
                m_names->addItem(text(person.name), text(person.name));
            m_names->setCurrentIndex(std::max(0, m_names->findData(before)));
        });
}

void HistoryPanel::tell(const QString& subject) {
    if (subject.isEmpty()) return;
    using Lines = core::Result<std::vector<core::HistoryLine>>;
    read([subject = subject.toStdString()](core::Club& club) { return club.answers().history(subject); },
         [this, subject](const Lines& lines) {
             m_lines->setRows(lines ? linesOf(*lines, today()) : std::vector<ListRow>());
             m_answer->setText(
                 lines ? tr("%1: %2").arg(codeInWords(subject.toStdString()),
                                          counted(static_cast<int>(lines->size()),
                                                  QT_TRANSLATE_N_NOOP("Words", "%n line of the record"),
                                                  QT_TRANSLATE_N_NOOP("Words", "%n lines of the record")))
                       : errorSentence(lines.error()));
             m_list->scrollToTop();
         });
}

} // namespace app
