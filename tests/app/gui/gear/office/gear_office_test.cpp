#include "tests/app/gui/gear/gear_story.h"
#include "tests/app/gui/nameless_controls.h"

#include <QAbstractItemView>
#include <QAction>
#include <QListWidget>
#include <QRadioButton>

#include <set>

using support::GearStory;
using support::namelessIn;

namespace {

class GearOffice : public GearStory {
protected:
    void expectNames(const QString& where) {
        settle();
        EXPECT_EQ(namelessIn(office()), QStringList()) << where.toStdString();
    }
    /// Whatever a choice, a line or a button of a new thing brings into view.
    void walkPage(const QString& id) {
        expectNames(id);
        const auto* page = office().page(id);
        for (auto* choice : page->findChildren<QRadioButton*>()) {
            choice->setChecked(true);
            expectNames(id + ' ' + choice->objectName());
        }
        for (auto* view : page->findChildren<QAbstractItemView*>()) {
            if (!view->isVisible() || view->model()->rowCount() == 0) continue;
            const int second = view->model()->rowCount() > 1 ? 1 : 0; // a list's first may be a heading
            view->setCurrentIndex(view->model()->index(second, 0));
            expectNames(id + ' ' + view->objectName());
        }
        for (const char* name :
             {"newKitButton", "newLogEntryButton", "manifestAddButton", "registerNewButton"})
            if (auto* button = page->findChild<QPushButton*>(name)) {
                button->click();
                expectNames(id + ' ' + name);
            }
    }
};

} // namespace

TEST_F(GearOffice, makesAPageWhenItIsFirstShown) {
    int made = 0;
    app::GearOffice office;
    for (const char* id : {"one", "two"})
        office.addPage(id, id, {}, [&made](QWidget* parent) {
            ++made;
            return new QLabel(parent);
        });
    EXPECT_EQ(made, 0);
    office.show();
    EXPECT_EQ(office.currentPage(), "one");
    EXPECT_EQ(made, 1);
    EXPECT_EQ(office.page("two"), nullptr);
    office.showPage("two");
    office.showPage("one");
    office.showPage("two");
    EXPECT_EQ(made, 2);
    office.showPage("three");
    EXPECT_EQ(office.currentPage(), "two");
}

TEST_F(GearOffice, keysAndNamesGoToEachPage) {
    openOffice("missing");
    auto* names = child<QListWidget>("gearPageNames");
    const QList<QAction*> actions = office().pageActions();
    ASSERT_EQ(actions.size(), names->count());
    std::set<QString> keys;
    for (const QAction* action : actions) {
        ASSERT_FALSE(action->shortcut().isEmpty()) << action->objectName().toStdString();
        keys.insert(action->shortcut().toString());
        QTest::keySequence(&office(), action->shortcut());
        EXPECT_EQ("gearPage " + office().currentPage(), action->objectName());
        settle();
    }
    EXPECT_EQ(static_cast<int>(keys.size()), actions.size());
    names->setFocus();
    QTest::keyClick(names, Qt::Key_Home);
    EXPECT_EQ(office().currentPage(), "missing");
    QTest::keyClick(names, Qt::Key_Down);
    EXPECT_EQ(office().currentPage(), "events");
}

TEST_F(GearOffice, theOnlyGearOfficerIsAtWorkUntilAnotherIsChosen) {
    openOffice("missing");
    EXPECT_EQ(office().officer(), "Joss Iveny"); // of demo/club/people.csv
    choose("officerBox", "Petra Lund");
    office().hide();
    office().show();
    settle();
    EXPECT_EQ(office().officer(), "Petra Lund");
}

TEST_F(GearOffice, twoGearOfficersHaveToSayWhoIsAtWork) {
    app::GearOffice office;
    office.setPeople({"Ada", "Ben"}, {"Cleo"});
    EXPECT_EQ(office.officer(), "");
    office.setOfficer("Ben");
    office.setPeople({"Ada", "Ben"}, {"Cleo"});
    EXPECT_EQ(office.officer(), "Ben");
    office.setPeople({"Ada", "Zoe"}, {"Cleo"});
    EXPECT_EQ(office.officer(), "");
}

TEST_F(GearOffice, everyControlOfEveryPageHasAName) {
    openOffice("missing");
    for (const QAction* action : office().pageActions()) {
        office().showPage(action->objectName().section(' ', 1));
        walkPage(office().currentPage());
    }
    QPushButton nameless(&office());
    nameless.setObjectName("namelessButton");
    nameless.show();
    EXPECT_EQ(namelessIn(office()), QStringList{"QPushButton namelessButton"});
}
