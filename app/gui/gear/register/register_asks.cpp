#include "app/gui/gear/register/register_page.h"

#include "app/gui/gear/manifests/keep_question.h"
#include "app/gui/gear/register/end_panel.h"
#include "app/gui/gear/register/pin_panel.h"
#include "app/gui/gear/register/rename_panel.h"
#include "app/gui/gear/register/row_panel.h"
#include "app/gui/widgets/beside_or_over.h"
#include "app/gui/widgets/plain_table.h"
#include "app/text/text.h"
#include "core/club/club.h"
#include "core/club/club_register.h"

#include <QPushButton>

// What the page Register asks in the place of a row's form, and the way back to it.

namespace app {

void RegisterPage::leave() {
    backToForm();
    m_row->close();
    m_body->close();
    m_pin->hide();
    m_table->setFocus(Qt::OtherFocusReason);
}

void RegisterPage::askClubsName() {
    ask([](core::Club& club) { return text(club.name()); },
        [this](const QString& name) {
            backToForm();
            m_row->close();
            m_pin->hide();
            m_body->open();
            askBeside(m_renaming);
            m_renaming->askClub(name);
        });
}

void RegisterPage::askRemove() {
    if (officer().empty()) return;
    const QString what = headingOf(m_row->sheet(), m_row->row());
    askBeside(m_removing);
    m_removing->ask(m_row->sheet() == core::SheetId::LifeRules
                        ? tr("Remove “%1”? Nothing falls due by it any more. If services were recorded by "
                             "it, it stays: then change it instead.")
                              .arg(what)
                        : tr("Remove “%1”? It goes only while no kit, manifest or rule uses it.").arg(what));
}

void RegisterPage::removeRow() {
    write([sheet = m_row->sheet(), row = m_row->row()](
              core::Club& club, const std::string& by,
              core::Moment moment) { return club.register_().remove(sheet, row, by, moment); },
          [this, heading = headingOf(m_row->sheet(), m_row->row())](core::Done) {
              leave();
              afterChange(tr("%1: removed.").arg(heading));
          });
}

void RegisterPage::askBeside(QWidget* panel) {
    m_row->hide();
    panel->show();
}

void RegisterPage::backToForm() {
    for (const auto& [panel, button] : {std::pair<QWidget*, QWidget*>(m_renaming, m_rename),
                                        {m_ending, m_end},
                                        {m_pinning, m_pin},
                                        {m_removing, m_remove}}) {
        if (panel->isHidden()) continue;
        m_row->show();
        button->setFocus(Qt::OtherFocusReason);
        panel->hide();
    }
}

} // namespace app
