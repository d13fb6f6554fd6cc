#pragma once

#include "app/gui/widgets/gear_page.h"

#include <string>
#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;

namespace app {

/// What was ordered has arrived: it is registered, gets its tags, and the tags are printed.
class ArrivalPanel : public GearPart {
    Q_OBJECT

public:
    explicit ArrivalPanel(GearTools tools, QWidget* parent = nullptr);

    /// What arrived, and how many were to be ordered.
    void setKit(const std::string& kitType, const std::string& size, int count);
    void refresh(); ///< the places to put it
    const std::vector<std::string>& registered() const { return m_codes; }

signals:
    void arrived(); ///< items were registered

private:
    void build();
    void registerKit();

    std::string m_kitType;
    std::string m_size;
    std::vector<std::string> m_codes;
    QLabel* m_name;
    QSpinBox* m_count;
    QComboBox* m_place;
    QLineEdit* m_made;
    QLineEdit* m_stamped;
    QPushButton* m_registerButton;
    QPushButton* m_tagsButton;
};

} // namespace app
