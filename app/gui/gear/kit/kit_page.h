#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include "app/gui/widgets/gear_page.h"

#include "app/gui/gear/kit/kit_list.h"
#include "app/paper/lists/list_table.h"

class QCheckBox;
class QLabel;
class QLineEdit;

namespace app {

class BesideOrOver;
class ChoiceBox;
class KitItemPanel;
class KitSeveralPanel;
class NewKitPanel;
class PaperButton;
class PartStack;
class PlainTable;
class PlainTableModel;

/// All kit in a table that is found, filtered and ordered as one likes; one item's page, new kit, and what is
/// done with several.
class KitPage : public GearPage {
    Q_OBJECT

public:
    explicit KitPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    void showItem(const QString& code); ///< whatever the list shows
    /// Finds and shows the item of a tag or label; a maker's label of none is new kit's, while that is
    /// written.
    bool takeScan(const QString& text, core::SeenBy how) override;
    const KitSearch& search() const { return m_list.search(); }

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void build();
    QLayout* buildHead();
    QWidget* buildFilters();
    QWidget* buildList();
    void connectParts();
    void connectTable();
    void take(KitList list);
    void fillFilters();
    KitChoice choice() const;
    void showFound();
    void showTicked();
    ListTable shownList();
    void sortBy(int column);
    void adaptToBody();
    void open(const QString& code);
    void openNewKit();
    void leave();
    void enter();

    KitList m_list;
    QString m_code; ///< id of the item shown
    QLineEdit* m_typed;
    ChoiceBox* m_state;
    ChoiceBox* m_home;
    ChoiceBox* m_kitType;
    ChoiceBox* m_order;
    QCheckBox* m_backwards;
    QWidget* m_filters = nullptr;
    QLabel* m_count;
    QLabel* m_empty;
    PaperButton* m_paper = nullptr;
    KitSeveralPanel* m_several;
    PlainTableModel* m_rows;
    PlainTable* m_table;
    PartStack* m_side;
    KitItemPanel* m_item;
    NewKitPanel* m_new;
    BesideOrOver* m_body;
};

} // namespace app
