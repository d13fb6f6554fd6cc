#pragma once

#include <QWidget>

#include "core/exchange/club_sheet/club_sheet.h"

#include <map>
#include <string>
#include <utility>
#include <vector>

class QLabel;
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
    /// `told`: said just now. `ofClub`: those that the club was told before, with what they mean now;
    /// each can be forgotten.
    void askForWords(core::SheetId sheet, const Asked& asked, const Words& told, const Words& ofClub);
    void showRows(const std::vector<core::WordApplied>& words); ///< in how many rows each of them stands
    void clear();

signals:
    void daysTold(core::DayOrder days);
    /// `ours`: as the register's CSV has it; empty: the cell says nothing.
    void wordTold(const QString& column, const QString& word, const QString& ours);
    void wordForgotten(const QString& column, const QString& word);

private:
    using Place = std::pair<std::string, std::string>;
    struct WordLine {
        Place place;
        bool isOfClub;
        QWidget* line;
        QLabel* question;
        ChoiceBox* box;
    };

    WordLine addQuestion(const QString& question, const QString& name);
    WordLine addWord(const Place& place, const std::string* told, bool isOfClub);
    void addForget(const WordLine& word);
    QString questionOf(const Place& place, int rows) const;

    QVBoxLayout* m_list;
    QVBoxLayout* m_asked;  ///< lines of words not told before
    QVBoxLayout* m_ofClub; ///< and those that were
    QLabel* m_ofClubHeading;
    QWidget* m_days = nullptr;
    ChoiceBox* m_daysBox = nullptr;
    std::vector<WordLine> m_words;
    core::SheetId m_sheet = core::SheetId::Items;
};

} // namespace app
