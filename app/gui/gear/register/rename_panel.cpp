#include "app/gui/gear/register/rename_panel.h"

#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/text/outlook_sentences.h"
#include "app/text/register_words.h"
#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_register.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

constexpr int mostWarnings = 3;

} // namespace

RenamePanel::RenamePanel(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "renamePanel", parent)
    , m_what(new ChoiceBox(this))
    , m_about(wordsLabel(this, "quiet", "renameAboutLabel"))
    , m_warnings(wordsLabel(this, "look", "renameWarningsLabel"))
    , m_name(wordsEdit(this, "renameNameEdit", tr("the new name")))
    , m_keep(wordsButton(this, tr("Keep the name"), "renameKeepButton"))
    , m_rename(wordsButton(this, tr("Rename"), "renameButton", true))
    , m_wait(typingWait(this)) {
    build();
    connect(m_wait, &QTimer::timeout, this, &RenamePanel::look);
    connect(m_what, &QComboBox::currentIndexChanged, this, &RenamePanel::showName);
    connect(m_name, &QLineEdit::textChanged, this, &RenamePanel::adapt);
    connect(m_name, &QLineEdit::returnPressed, this, [this] { m_rename->setFocus(Qt::TabFocusReason); });
    connect(m_keep, &QPushButton::clicked, this, &RenamePanel::kept);
    connect(m_rename, &QPushButton::clicked, this, &RenamePanel::rename);
    hide();
}

void RenamePanel::build() {
    m_what->setObjectName("renameWhatBox");
    m_what->setAccessibleName(tr("what is renamed"));
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spaceUnit);
    buttons->addWidget(m_keep);
    buttons->addStretch(1);
    buttons->addWidget(m_rename);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(m_what);
    layout->addWidget(m_name);
    layout->addWidget(m_warnings);
    layout->addWidget(m_about);
    layout->addWidget(saidLabel("renameSaidLabel"));
    layout->addLayout(buttons);
    layout->addStretch(1);
}

bool RenamePanel::isFor(core::SheetId sheet) {
    using core::SheetId;
    return sheet == SheetId::Boats || sheet == SheetId::People || sheet == SheetId::Places ||
           sheet == SheetId::KitTypes || sheet == SheetId::Sizes;
}

void RenamePanel::ask(core::SheetId id, const core::Cells& row) {
    m_whats.clear();
    m_what->clear();
    const core::Sheet& sheet = core::sheet(id);
    const auto add = [&](int column, const std::string& of) {
        const std::string& name = row[static_cast<std::size_t>(column)];
        const auto named = core::namedIn(sheet, column);
        if (!named || name.empty()) return;
        m_whats.push_back({*named, name, of});
        const std::string_view word = sheet.columns[static_cast<std::size_t>(column)].name;
        m_what->addItem(tr("%1 “%2”").arg(columnInWords(id, word), text(name)));
    };
    if (id == core::SheetId::Sizes)
        add(1, row[0]);
    else
        add(0, {});
    if (id == core::SheetId::Boats) add(sheet.indexOf("boat_class"), {});
    m_about->setText(
        tr("What was recorded under the old name stays and is about the same. Signed checks keep "
           "the name that they were signed with."));
    showPanel();
}

void RenamePanel::askClub(const QString& name) {
    m_whats = {{std::nullopt, name.toStdString(), {}}};
    m_what->clear();
    m_about->setText(
        tr("The name of the club: it stands on the board and on whatever is printed from now on. What is "
           "printed already does not change."));
    showPanel();
}

void RenamePanel::showPanel() {
    m_what->setVisible(m_whats.size() > 1);
    say({});
    showName();
    show();
    m_name->setFocus(Qt::OtherFocusReason);
    m_name->selectAll();
}

const RenamePanel::What& RenamePanel::what() const {
    return m_whats[static_cast<std::size_t>(std::max(0, m_what->currentIndex()))];
}

void RenamePanel::showName() {
    if (m_whats.empty()) return;
    m_name->setText(text(what().name));
    adapt();
}

void RenamePanel::adapt() {
    const QString typed = m_name->text().trimmed();
    m_rename->setEnabled(!m_whats.empty() && !typed.isEmpty() && typed != text(what().name));
    m_warnings->hide();
    if (m_rename->isEnabled()) m_wait->start();
}

void RenamePanel::look() {
    const auto named = what().named;
    if (!m_rename->isEnabled() || !named) return;
    const QString typed = m_name->text();
    read([named = *named, from = what().name, to = typed.toStdString()](
             core::Club& club) { return club.register_().warningsOfName(named, from, to); },
         [this, typed](const std::vector<core::Error>& warnings) {
             if (typed != m_name->text()) return;
             m_warnings->setText(warningsInLines(warnings, mostWarnings));
             m_warnings->setVisible(!warnings.empty());
         });
}

void RenamePanel::rename() {
    const QString to = m_name->text().trimmed();
    write(
        [what = what(), to = to.toStdString()](core::Club& club, const std::string& by, core::Moment) {
            return what.named ? club.register_().rename(*what.named, what.name, to, what.of, by)
                              : club.register_().nameClub(to, by);
        },
        [this, from = text(what().name), to](core::Done) {
            emit renamed(tr("“%1” is called “%2” from now on.").arg(from, text(to)));
        });
}

void RenamePanel::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape)
        emit kept();
    else
        GearPart::keyPressEvent(event);
}

} // namespace app
