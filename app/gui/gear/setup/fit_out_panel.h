#pragma once

#include "app/gui/gear/setup/fit_out_draft.h"
#include "app/gui/widgets/gear_page.h"
#include "core/register/boat.h"
#include "core/register/item.h"

#include <string>
#include <vector>

class QGridLayout;
class QLabel;
class QLayout;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace app {

class ChoiceBox;
class RowList;
class RowListModel;

/// A boat's manifest, or the spares at a place: what is there, and what is to be registered now, in one.
class FitOutPanel : public GearPart {
    Q_OBJECT

public:
    explicit FitOutPanel(GearTools tools, QWidget* parent = nullptr);

    void show(const QString& boat); ///< empty: the one shown last, else the first
    void refresh();
    const std::vector<std::string>& registered() const { return m_registered; } ///< tags

signals:
    void leaveWanted();

private:
    struct Read {
        std::vector<core::Boat> boats;
        std::vector<std::string> places;
        std::vector<core::KitType> kitTypes;
        std::vector<core::Person> people;
        std::vector<core::FitOutLine> lines;
        std::string boat, place; ///< whose the lines are
    };
    struct DayEdit {
        QLineEdit* edit;
        FitOutDraft::Field field;
    };

    void build();
    QLayout* buildHead();
    QWidget* buildForm();
    QLayout* buildFoot();
    void addDay(QGridLayout& grid, const QString& word, const char* name, FitOutDraft::Field field);
    void connectParts();
    static Read readHome(core::Club& club, std::string boat, std::string place, core::CalendarDay today);
    void take(Read read);
    QString nothingAskedInWords() const;
    void showRows();
    void showForm(); ///< of the row that the list stands on
    void showChoices(const core::KitType* type);
    QString current() const;
    void changed(); ///< something of the form was written into the draft
    void adapt();
    void registerAll();
    void showRegistered(const std::vector<std::vector<core::Item>>& items);

    FitOutDraft m_draft;
    std::vector<core::Person> m_people;
    QString m_boatClass; ///< of the boat that is fitted out
    std::vector<std::string> m_registered;
    std::vector<DayEdit> m_days;
    bool m_isFilling = false; ///< the form is filled by the program
    ChoiceBox* m_home;
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
    QLabel* m_title;
    QSpinBox* m_count;
    ChoiceBox* m_size;
    ChoiceBox* m_person;
    QLineEdit* m_serial;
    QPushButton* m_register;
    QPushButton* m_tags;
    QPushButton* m_back;
};

} // namespace app
