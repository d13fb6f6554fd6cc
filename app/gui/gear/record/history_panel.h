#pragma once

#include "app/gui/widgets/gear_page.h"

class QComboBox;
class QLabel;
class QLineEdit;

namespace app {

class RowList;
class RowListModel;

/// Everything recorded about a boat, a person or an item, in words, newest first.
class HistoryPanel : public GearPart {
    Q_OBJECT

public:
    explicit HistoryPanel(GearTools tools, QWidget* parent = nullptr);

    void refresh(); ///< the names to choose from
    void tell(const QString& subject);

private:
    void build();

    QComboBox* m_names;
    QLineEdit* m_code;
    QLabel* m_answer;
    RowListModel* m_lines;
    RowList* m_list;
};

} // namespace app
