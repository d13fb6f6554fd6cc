#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include "app/gui/widgets/gear_page.h"

#include "app/gui/widgets/second_press.h"
#include "core/club/register_edit.h"
#include "core/register/item.h"

#include <map>
#include <set>
#include <string>
#include <vector>

class QLabel;
class QPushButton;
class QTimer;

namespace app {

class ChoiceBox;
class SearchBox;

/// What is done with several items that are ticked, all or none of them: another home, owner or size, written
/// off, their tags.
class KitSeveralPanel : public GearPart {
    Q_OBJECT

public:
    KitSeveralPanel(GearTools tools, QWidget* parent);

    /// In view while there are some.
    void setItems(std::vector<core::Item> items);

signals:
    void changed(const QString& sentence); ///< it is done, and the register has changed
    void untickWanted();

private:
    enum class Act { Move, Give, Size, WriteOff, Tags };
    struct Names {
        std::set<std::string> boats, places;
        QStringList homes, people;
        std::vector<std::pair<std::string, QStringList>> sizes; ///< of kit types
        std::map<std::string, core::Cells> rows;                ///< of the items, as they are looked at
    };

    void build();
    void connectParts();
    static Names readNames(core::Club& club, const std::vector<core::Item>& items, core::CalendarDay today);
    void look();
    Act act() const;
    void showNames();
    void adapt();
    QString doesInWords() const; ///< the words on the button
    core::CellTexts cells() const;
    core::RegisterEdit edit() const;
    void plan();
    void press();
    void writeRows();
    void writeOff();
    void takeWritten(const core::EditPlan& done);

    Names m_names;
    std::vector<core::Item> m_items;
    SecondPress m_second;
    int m_question = 0; ///< of the newest plan
    ChoiceBox* m_act;
    SearchBox* m_name;
    ChoiceBox* m_why;
    QPushButton* m_do;
    QPushButton* m_none;
    QLabel* m_warnings; ///< what may not be meant so
    QLabel* m_effects;
    QTimer* m_wait;
};

} // namespace app
