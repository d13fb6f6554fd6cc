#include "tests/app/desk/gear/gear_story.h"

#include <QAccessible>
#include <QAction>
#include <QListWidget>

#include <set>

using support::GearStory;

namespace {

class GearOffice : public GearStory {};

bool isControl(QAccessible::Role role) {
    static const std::set<QAccessible::Role> controls{
        QAccessible::Button, QAccessible::CheckBox, QAccessible::ComboBox,   QAccessible::EditableText,
        QAccessible::List,   QAccessible::ListItem, QAccessible::ButtonMenu, QAccessible::SpinBox};
    return controls.contains(role);
}

/// Controls in view without a name, by their object's name.
QStringList namelessIn(QAccessibleInterface* at) {
    QStringList nameless;
    if (!at || at->state().invisible) return nameless;
    if (isControl(at->role()) && at->text(QAccessible::Name).trimmed().isEmpty())
        nameless << (at->object() ? at->object()->objectName() : QString("item"));
    // A box's own list and arrows speak through the box.
    if (at->role() == QAccessible::ComboBox || at->role() == QAccessible::SpinBox) return nameless;
    for (int i = 0; i < at->childCount(); ++i)
        nameless << namelessIn(at->child(i));
    return nameless;
}

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
        settle();
        EXPECT_EQ(namelessIn(QAccessible::queryAccessibleInterface(&office())), QStringList())
            << action->objectName().toStdString();
    }
    QPushButton nameless(&office());
    nameless.setObjectName("namelessButton");
    nameless.show();
    EXPECT_EQ(namelessIn(QAccessible::queryAccessibleInterface(&office())), QStringList{"namelessButton"});
}
