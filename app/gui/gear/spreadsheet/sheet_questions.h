#pragma once

#include <QWidget>

#include "core/exchange/club_sheet/club_sheet.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

class QVBoxLayout;

namespace app {

class ChoiceBox;

/// What only a person can say about their spreadsheet, asked once each: the order of day and month, and what
/// a word of theirs means. What was said stays, and can be changed.
class SheetQuestions : public QWidget {
    Q_OBJECT

public:
    /// Column of the sheet and a word in it, with what it was said to mean.
    using Words = std::map<std::pair<std::string, std::string>, std::string>;
    using Asked = std::vector<std::pair<std::string, std::string>>; ///< likewise, not answered yet

    explicit SheetQuestions(QWidget* parent = nullptr);

    /// `example`: a day of the spreadsheet that may be two; empty: none was found, or it was told.
    void askForDays(const QString& example, std::optional<core::DayOrder> days);
    void askForWords(core::SheetId sheet, const Asked& asked, const Words& told);
    void clear();

signals:
    void daysTold(core::DayOrder days);
    /// `ours`: as the register's CSV has it; empty: the cell says nothing.
    void wordTold(const QString& column, const QString& word, const QString& ours);

private:
    ChoiceBox* addQuestion(const QString& question, const QString& name);
    QWidget* addWord(const core::Column& column, const std::string& word, const std::string* told);

    QVBoxLayout* m_list;
    QWidget* m_days = nullptr;
    ChoiceBox* m_daysBox = nullptr;
    std::vector<std::pair<std::pair<std::string, std::string>, QWidget*>> m_words; ///< with their lines
    core::SheetId m_sheet = core::SheetId::Items;
};

} // namespace app
