#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/register/boat.h"
#include "core/register/item.h"
#include "core/register/kit_type.h"
#include "core/register/new_kit.h"

#include <string>
#include <vector>

class QGridLayout;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace app {

class ChoiceBox;
class RowListModel;
class RowList;

/// Kit that has arrived: what it is, how many or which makers' labels; it is registered with new tags, which
/// are then printed.
class NewKitPanel : public GearPart {
    Q_OBJECT

public:
    explicit NewKitPanel(GearTools tools, QWidget* parent = nullptr);

    void refresh();                         ///< reads kit types, boats, places and people anew
    void addLabel(const QString& asItCame); ///< a maker's
    const std::vector<std::string>& registered() const { return m_registered; }

signals:
    void changed(); ///< kit was registered

private:
    struct Read {
        std::vector<core::KitType> kitTypes;
        std::vector<core::Boat> boats;
        std::vector<std::string> places;
        std::vector<core::Person> people;
    };

    void build();
    QWidget* buildForm(); ///< the fields, which scroll
    QLineEdit* addDay(QGridLayout& grid, const QString& word, const char* name);
    void take(Read read);
    void showSizes();
    void showLabels();
    void adapt();
    core::NewKit kit() const;
    void registerIt();
    void showRegistered(const std::vector<core::Item>& items);

    Read m_read;
    std::vector<std::string> m_labels;
    std::vector<std::string> m_registered; ///< codes
    ChoiceBox* m_kitType;
    ChoiceBox* m_size;
    ChoiceBox* m_home;
    ChoiceBox* m_person;
    QLineEdit* m_made = nullptr;
    QLineEdit* m_firstUse = nullptr;
    QLineEdit* m_stamped = nullptr;
    QLineEdit* m_maker;
    QLineEdit* m_note;
    QSpinBox* m_count;
    QLineEdit* m_label;
    RowListModel* m_lines;
    RowList* m_list;
    QPushButton* m_register;
    QPushButton* m_tags;
};

} // namespace app
