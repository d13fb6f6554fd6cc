#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/gear/spreadsheet/sheet_reading.h"
#include "app/gui/widgets/gear_page.h"
#include "core/exchange/club_sheet/club_sheet.h"
#include "core/spreadsheet/workbook.h"

#include <filesystem>
#include <map>
#include <memory>
#include <vector>

class QCheckBox;
class QLabel;
class QLayout;
class QPushButton;

namespace app {

class ChoiceBox;
class ColumnMeanings;
class SheetQuestions;
class SheetTableModel;
class SheetTableView;

/// A club's own spreadsheet on its way into the register: its rows as they are, what they are and what each
/// column means, what would become of them, and one press for all of them or none.
class SpreadsheetPage : public GearPage {
    Q_OBJECT

public:
    explicit SpreadsheetPage(GearTools tools, QWidget* parent = nullptr);
    ~SpreadsheetPage() override;

    void refresh() override;
    void chooseFile(); ///< asks which, and reads it
    void readFile(const QString& path);
    const core::ClubSheetChoices& choices() const { return m_choices; }
    bool isBusy() const { return m_isReading || m_isPlanning; } ///< something is read or planned still

private:
    struct MakeBox {
        QCheckBox* box;
        core::SheetId sheet;
    };

    void build();
    QLayout* buildHead();
    QLayout* buildMake();
    QWidget* buildTable();
    QLayout* buildFoot();
    void connectParts();
    void takeBook(const QString& path, core::Workbook book, core::SheetId kind);
    void setKind(core::SheetId sheet);
    void forgetMeanings();
    void chooseMeaning(const QString& heading, const QString& meaning);
    void plan();
    void takePlan(PlannedSheet planned);
    void showLayout();
    void showPlan();
    void showQuestions();
    QString planAndWords(const core::ClubSheetPlan& plan) const;
    void forgetWord(const QString& column, const QString& word);
    const std::vector<core::RejectedRow>& warnings() const; ///< of rows that would be imported
    void goToNextReason();
    void showCurrentRow();
    void importIt();
    void adapt();

    std::filesystem::path m_clubFile; ///< the club that the spreadsheet was read for
    std::shared_ptr<const core::Workbook> m_book;
    core::ClubSheetChoices m_choices;                   ///< of its words those that are told anew
    std::map<core::SheetId, core::WordMeanings> m_said; ///< by kind of rows: not imported yet
    /// Headings and the meanings that were chosen for them, the newest last.
    std::vector<std::pair<std::string, std::string>> m_picked;
    PlannedSheet m_planned;
    bool m_isReading = false;
    bool m_isPlanning = false;
    bool m_mustPlan = false; ///< a choice was changed meanwhile
    int m_turn = 0;          ///< counts the clubs that the page was shown for
    QPushButton* m_choose;
    QLabel* m_file;
    QWidget* m_below; ///< what there is once a file is read
    ChoiceBox* m_tables;
    ChoiceBox* m_kind;
    std::vector<MakeBox> m_make;
    SheetQuestions* m_questions;
    SheetTableModel* m_model;
    SheetTableView* m_table;
    ColumnMeanings* m_meanings;
    QLabel* m_row; ///< of the row that the keyboard is on: why it is refused
    QLabel* m_summary;
    QLabel* m_warnings; ///< rows that are taken and may not be meant so, from that one on
    QPushButton* m_next;
    QPushButton* m_import;
};

} // namespace app
