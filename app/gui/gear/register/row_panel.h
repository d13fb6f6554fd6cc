#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include "app/gui/widgets/gear_page.h"

#include "app/gui/gear/register/row_form.h"
#include "core/answers/due_list.h"
#include "core/club/register_edit.h"

#include <optional>

class QLabel;
class QPushButton;
class QTimer;

namespace app {

class FlowLayout;

/// One row of the register in a form: what is typed, what saving it would do to boats and days, what may not
/// be meant so, and why a cell is refused, as an import of that row would tell both. What is half written is
/// kept.
class RowPanel : public GearPart {
    Q_OBJECT

public:
    /// `prefix` of the names of its parts.
    RowPanel(GearTools tools, const QByteArray& prefix, QWidget* parent);
    ~RowPanel() override;

    /// A row that is there; `heading` names it.
    void open(core::SheetId sheet, const core::Cells& row, const QString& heading);
    /// A row that is not there yet; the cells of `given` are not asked.
    void beginNew(core::SheetId sheet, const core::CellTexts& given, const QString& heading);
    void close();
    bool isNew() const { return m_isNew; }
    core::SheetId sheet() const { return m_sheet; }
    const core::Cells& row() const { return m_row; } ///< as it was looked at
    bool isOpenOn(core::SheetId sheet, const core::Cells& row) const;
    bool isChanged() const { return !m_form->changes().empty(); }
    void takeKeyboard() { m_form->takeKeyboard(); }
    /// Room for more buttons, before those that save and discard.
    FlowLayout* buttons() const { return m_buttons; }
    using GearPart::say;

signals:
    /// The row is written; `key`: of its place in a table, see keyOfRow. Empty: it stood so already.
    void changed(const QString& sentence, const QString& key);
    void discarded();

private:
    struct Planned {
        core::Result<core::EditPlan> plan;
        std::vector<core::DueRow> due; ///< of a life rule: the days of now
    };

    void build(const QByteArray& prefix);
    void begin(core::SheetId sheet, const QString& heading);
    void tabThroughPage();
    void readNames();
    void edited();
    core::RegisterEdit edit() const;
    std::string cellNow(std::string_view column) const;
    QString draftPlace() const;
    void keepDraft();
    void plan();
    void takePlan(const Planned& planned);
    void showEffects(const Planned& planned);
    void hideEffects();
    void refuse(const std::vector<core::RejectedRow>& rejected, bool all);
    QString nameOfNew() const;
    std::string writer(); ///< whose name a saving is recorded under; empty: that it wants one is said
    void save();
    void afterWrite(const core::EditPlan& done);
    void lookAgain(const core::Error& error);
    void discard();
    void adapt();

    core::SheetId m_sheet = core::SheetId::Places;
    core::Cells m_row;
    core::CellTexts m_given;
    bool m_isNew = false;
    bool m_isOpen = false;
    bool m_isPlanning = false; ///< a plan is asked for and not answered yet
    bool m_mustPlan = false;   ///< something was typed since
    int m_opened = 0;          ///< counts rows that were opened, so that no answer comes to another's form
    QLabel* m_heading;
    RowForm* m_form;
    QLabel* m_others; ///< reasons that have no field
    QLabel* m_effects;
    QLabel* m_warnings; ///< what may not be meant so
    QLabel* m_days;
    QLabel* m_hint; ///< how the cell is written that has the keyboard
    FlowLayout* m_buttons;
    QPushButton* m_save;
    QPushButton* m_discard;
    QTimer* m_wait;
};

/// The names that fields of that sheet offer, without those that are no longer here; on the club's thread.
/// Sizes stand under "size of TYPE".
NamesOfColumns namesFor(const core::Club& club, core::SheetId sheet, core::CalendarDay today);

} // namespace app
