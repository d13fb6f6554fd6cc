#pragma once

#include "app/gui/gear/office/gear_pages.h"
#include "app/text/printed_tags.h"
#include "core/answers/event_tally.h"

#include <QWidget>

#include <map>
#include <string>

class QLabel;

namespace app {

class RowList;
class ChoiceBox;
class RowListModel;

/// What went out and what came back, over all boats of a patrol, training day or carnival, or of a day.
class EventPage : public QWidget {
    Q_OBJECT

public:
    explicit EventPage(GearTools tools, QWidget* parent = nullptr);

    void refresh();
    void show(const QString& event); ///< a name, or a day as 2026-03-14
    using QWidget::show;

signals:
    void shown();

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct Read {
        core::Result<core::EventTally> tally;
        std::map<std::string, std::string> kitTypes;
        PrintedTags tags;
    };

    void build();
    void take(const Read& read);

    GearTools m_tools;
    ChoiceBox* m_event;
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
};

} // namespace app
