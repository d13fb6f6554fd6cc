#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/answers/item_record.h"

#include <QStringList>

#include <vector>

class QLabel;
class QLayout;
class QPushButton;

namespace app {

class ChoiceBox;
class ReasonForm;

/// What happened to an item today, a press for each event that its rules wait for; and a service record that
/// was made in error, withdrawn with a reason.
class ItemRecordPanel : public GearPart {
    Q_OBJECT

public:
    explicit ItemRecordPanel(GearTools tools, QWidget* parent = nullptr);

    void open(const QString& code); ///< reads what there is of that item

signals:
    void settled(const QString& sentence);             ///< it is recorded
    void said(const QString& sentence, bool toLookAt); ///< it is not, or nobody is named

protected:
    void say(const QString& sentence, bool toLookAt) override;

private:
    struct Read {
        std::vector<std::string> events;
        std::vector<core::ServiceEntry> records;
    };

    void build();
    void take(Read read);
    void showEvents(const std::vector<std::string>& events);
    void happened(const std::string& event);
    void withdraw(const QString& why);
    void showReason(bool isShown);

    QString m_code;
    std::vector<core::ServiceEntry> m_records;
    QWidget* m_eventRow;
    QLayout* m_events;
    QWidget* m_recordRow;
    ChoiceBox* m_record;
    QPushButton* m_error;
    ReasonForm* m_reason;
};

} // namespace app
