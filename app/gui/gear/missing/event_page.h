#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/answers/event_tally.h"
#include "core/club/club_events.h"

#include <map>
#include <string>

class QLabel;

namespace app {

class RowList;
class ChoiceBox;
class EventFiling;
class RowListModel;

/// What went out and what came back, over all boats of a patrol, training day or carnival, or of a day.
class EventPage : public GearPage {
    Q_OBJECT

public:
    explicit EventPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    void show(const QString& event); ///< a name, or a day as 2026-03-14
    using QWidget::show;

private:
    struct Read {
        core::Result<core::EventTally> tally;
        std::map<std::string, std::string> kitTypes;
        std::vector<core::FiledCheck> checks;
    };

    void build();
    void take(const Read& read);
    void file(const QString& check, const QString& event);

    ChoiceBox* m_event;
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
    EventFiling* m_filing;
};

} // namespace app
