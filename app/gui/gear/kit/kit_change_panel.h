#pragma once

#include "app/gui/gear/register/row_panel.h"
#include "app/gui/widgets/gear_page.h"

#include <string>
#include <vector>

class QPushButton;

namespace app {

class RowList;
class RowListModel;

/// Everything of an item but its code, in a form; beneath it its parts, each a row of its own.
class KitChangePanel : public GearPart {
    Q_OBJECT

public:
    KitChangePanel(GearTools tools, QWidget* parent);

    void open(const std::string& id);
    void close();

signals:
    void changed(const QString& sentence); ///< something of it is written
    void left();                           ///< nothing more is to be changed

private:
    struct Rows {
        std::optional<core::Cells> item;
        std::vector<core::Cells> parts;
    };

    void build();
    void refresh();
    void take(Rows rows);
    void showItem();
    void showPart(const QString& key);
    void showNewPart();
    void afterWrite(const QString& sentence);

    std::string m_id;
    Rows m_rows;
    RowPanel* m_row;
    RowListModel* m_lines;
    RowList* m_parts;
    QPushButton* m_back;
    QPushButton* m_newPart;
};

} // namespace app
