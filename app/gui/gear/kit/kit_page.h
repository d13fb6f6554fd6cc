#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include "app/gui/widgets/gear_page.h"

#include "app/gui/gear/kit/kit_search.h"

#include <set>
#include <string>

class QLabel;
class QLineEdit;
class QStackedWidget;

namespace app {

class KitItemPanel;
class NewKitPanel;
class PlainTable;
class PlainTableModel;

/// The register: found as it is typed, one item's page beside the list, new kit.
class KitPage : public GearPage {
    Q_OBJECT

public:
    explicit KitPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    void showItem(const QString& code); ///< whatever the list shows
    /// Shows the item of a tag or label; a maker's label of none is new kit's, while that is written.
    bool takeScan(const QString& text, core::SeenBy how) override;
    const KitSearch& search() const { return m_search; }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Read {
        std::vector<core::Item> kit;
        std::set<std::string> due; ///< ids of items of which something is to be looked at
    };

    void build();
    void connectParts();
    void take(Read read);
    void showFound();
    void open(const QString& code);
    void enter();

    KitSearch m_search;
    std::set<std::string> m_due;
    QString m_code; ///< id of the item shown
    QLineEdit* m_typed;
    QLabel* m_count;
    PlainTableModel* m_rows;
    PlainTable* m_table;
    QStackedWidget* m_side;
    QLabel* m_hint;
    KitItemPanel* m_item;
    NewKitPanel* m_new;
};

} // namespace app
