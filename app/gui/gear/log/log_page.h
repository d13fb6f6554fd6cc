#pragma once

#include "app/gui/gear/log/log_words.h"
#include "app/gui/widgets/gear_page.h"

#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class ChoiceBox;
class Drafts;
class PartStack;
class PhotoStrip;
class RowList;
class RowListModel;

/// The log of all boats and kit, open entries first. An entry is closed with what was done, or a new one is
/// written.
class LogPage : public GearPage {
    Q_OBJECT

public:
    explicit LogPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    /// While a new entry is written, the item that it is about.
    bool takeScan(const QString& text, core::SeenBy how) override;
    const std::vector<LoggedEntry>& entries() const { return m_log; }

private:
    struct Read {
        std::vector<LoggedEntry> log;
        QStringList boats;
    };

    void build();
    QWidget* buildNew();
    QWidget* buildOne();
    void take(Read read);
    void choose(const QString& entry);
    void beginNew();
    QString draftPlace() const; ///< of the page
    void openNewDraft();
    void writeEntry();
    void closeEntry();

    std::vector<LoggedEntry> m_log;
    QString m_chosen;
    Drafts* m_newDraft;
    Drafts* m_closingDraft;
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
    PartStack* m_side;
    QWidget* m_new;
    PhotoStrip* m_photos;
    ChoiceBox* m_about;
    QLineEdit* m_code;
    QLineEdit* m_text;
    ChoiceBox* m_severity;
    QPushButton* m_write;
    QWidget* m_one;
    QLabel* m_oneAbout;
    QLabel* m_oneText;
    QLineEdit* m_closing;
    QPushButton* m_close;
};

} // namespace app
