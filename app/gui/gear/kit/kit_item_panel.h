#pragma once

#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/gear/office/gear_pages.h"

#include <QWidget>

#include <optional>

class QLabel;
class QPushButton;

namespace app {

class RowList;
class ChoiceBox;
class RowListModel;
class SaidLabel;

/// Reads all that is to be shown of an item; on the club's thread. Empty: there is none of that code.
std::optional<ItemAnswer> readItem(const core::Club& club, const std::string& code, core::CalendarDay today);

/// One item: what it is, where it stands, its dates with their reasons, parts, log and history; a new tag,
/// its print, release and write-off.
class KitItemPanel : public QWidget {
    Q_OBJECT

public:
    explicit KitItemPanel(GearTools tools, QWidget* parent = nullptr);

    void open(const QString& code); ///< reads it anew
    const std::optional<ItemAnswer>& answer() const { return m_answer; }

signals:
    void shown();
    void gone();    ///< there is none of that code, as in another club
    void changed(); ///< the register has changed

private:
    void build();
    void take(std::optional<ItemAnswer> answer);
    void replaceTag();
    void release();
    void writeOff();
    bool isOfficerNamed();
    void settle(const core::Outcome& done, const QString& sentence);

    GearTools m_tools;
    QString m_code;
    std::optional<ItemAnswer> m_answer;
    QLabel* m_name;
    QLabel* m_tag;
    QLabel* m_state;
    QLabel* m_about;
    RowListModel* m_lines;
    RowList* m_list;
    QPushButton* m_print;
    QPushButton* m_newTag;
    QPushButton* m_release;
    ChoiceBox* m_why;
    QPushButton* m_writeOff;
    SaidLabel* m_said;
};

} // namespace app
