#pragma once

#include "app/gui/gear/kit/kit_words.h"
#include "app/gui/widgets/gear_page.h"

#include <optional>

class QBoxLayout;
class QLabel;
class QPushButton;
class QStackedWidget;

namespace app {

class ItemRecordPanel;
class KitChangePanel;
class PhotoStrip;
class ReasonForm;
class RowList;
class RowListModel;
class WriteOffChoice;

/// Reads all that is to be shown of an item; on the club's thread. Empty: there is none of that code.
std::optional<ItemAnswer> readItem(const core::Club& club, const std::string& code, core::CalendarDay today);

/// One item: what it is, where it stands, its dates with their reasons, parts, log and history; a form of its
/// cells; a new tag, its print, release and write-off.
class KitItemPanel : public GearPart {
    Q_OBJECT

public:
    explicit KitItemPanel(GearTools tools, QWidget* parent = nullptr);

    void open(const QString& code);
    void refresh();   ///< reads that item anew
    void closeForm(); ///< shows the item itself again; what was half written is kept
    const std::optional<ItemAnswer>& answer() const { return m_answer; }

signals:
    void gone();    ///< there is none of that code, as in another club
    void changed(); ///< the register has changed

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void build();
    QWidget* buildView();
    QWidget* buildActs();
    void change();
    void take(std::optional<ItemAnswer> answer);
    void replaceTag();
    void release();
    void writeOff(const QString& why);
    void reinstate(const QString& why);
    void settle(const QString& sentence); ///< what was written is done

    QString m_code;
    std::optional<ItemAnswer> m_answer;
    QLabel* m_name;
    QLabel* m_tag;
    QLabel* m_state;
    QLabel* m_about;
    RowListModel* m_lines;
    RowList* m_list;
    QStackedWidget* m_views;
    QBoxLayout* m_body; ///< the lines, and beside or beneath them what can be done
    KitChangePanel* m_changing;
    QPushButton* m_change;
    QPushButton* m_print;
    QPushButton* m_newTag;
    QLabel* m_releaseCaution; ///< beside the button that releases
    QPushButton* m_release;
    WriteOffChoice* m_writeOff;
    ReasonForm* m_reinstate;
    ItemRecordPanel* m_record;
    PhotoStrip* m_photos;
};

} // namespace app
