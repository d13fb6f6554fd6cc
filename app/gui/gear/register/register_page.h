#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include "app/gui/widgets/gear_page.h"

#include "app/gui/gear/register/register_rows.h"

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class BesideOrOver;
class ChoiceBox;
class EndPanel;
class KeepQuestion;
class PinPanel;
class PlainTable;
class PlainTableModel;
class RenamePanel;
class RowPanel;

/// The register kept by hand: boats, people, places, and kit types with their sizes and life rules. A table,
/// and the row that is chosen in a form.
class RegisterPage : public GearPage {
    Q_OBJECT

public:
    explicit RegisterPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    /// The rows of boats, people, places or kit types, and that row of them opened; empty: none.
    void showSheet(core::SheetId sheet, const QString& row = {});
    void askClubsName(); ///< begins to mend it
    /// Shows the boat, person or place of a tag.
    bool takeScan(const QString& text, core::SeenBy how) override;

protected:
    void showEvent(QShowEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QWidget* buildList();
    QWidget* buildSide();
    void connectParts();
    core::SheetId sheet() const; ///< whose rows are shown
    void showTable();
    void showWords(); ///< of the buttons, and what to do on an empty page
    const RegisterRow* rowOf(const QString& key) const;
    std::string kitTypeChosen() const; ///< of the row that is chosen; empty: none
    void openRow(const QString& key);
    void beginNew(core::SheetId sheet);
    void askBeside(QWidget* panel); ///< in the place of the form
    void backToForm();
    void leave();
    void askRemove();
    void removeRow();
    void chooseWritten(const QString& key);
    void afterChange(const QString& sentence);

    RegisterSheets m_sheets;
    std::vector<RegisterRow> m_rows;
    QString m_wanted;  ///< key of a row to be chosen when it is read
    QString m_written; ///< key of the row that was written last, until it or another is chosen
    ChoiceBox* m_sheet;
    QLineEdit* m_typed;
    QPushButton* m_new;
    QPushButton* m_newSize;
    QPushButton* m_newRule;
    QPushButton* m_club; ///< its name
    QLabel* m_hint;
    PlainTableModel* m_model;
    PlainTable* m_table;
    RowPanel* m_row;
    QPushButton* m_rename;
    RenamePanel* m_renaming;
    QPushButton* m_end;
    EndPanel* m_ending;
    QPushButton* m_pin;
    PinPanel* m_pinning;
    QPushButton* m_remove; ///< of a kit type, size or life rule
    KeepQuestion* m_removing;
    BesideOrOver* m_body;
};

} // namespace app
