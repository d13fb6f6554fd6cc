#include "app/gui/widgets/search_box.h"

#include "tests/app/gui/story_hand.h"

#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QCompleter>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

using support::waitFor;

/// The list of names opens unasked: it must not be in the way of whoever goes on to "Save".
TEST(SearchBox, itsListGoesWhereANameIsWholeAndAPressBesideItIsNotLost) {
    QWidget window;
    window.resize(600, 400);
    app::SearchBox box(&window);
    box.setGeometry(10, 10, 300, 60);
    box.setNames({"inflatable", "rowing boat"});
    QPushButton save("Save", &window);
    save.setGeometry(400, 300, 120, 60);
    int saved = 0;
    QObject::connect(&save, &QPushButton::clicked, [&] { ++saved; });
    window.show();
    ASSERT_TRUE(QTest::qWaitForWindowExposed(&window));
    box.lineEdit()->setFocus();
    QAbstractItemView* list = box.completer()->popup();
    QTest::keyClicks(box.lineEdit(), "flat");
    ASSERT_TRUE(waitFor([&] { return list->isVisible(); })) << "any part of a name finds it";
    const QPoint place = save.mapToGlobal(save.rect().center());
    QTest::mousePress(list, Qt::LeftButton, {}, list->mapFromGlobal(place));
    EXPECT_FALSE(list->isVisible());
    EXPECT_EQ(saved, 1);
    box.setEditText({});
    box.lineEdit()->setFocus();
    QTest::keyClicks(box.lineEdit(), "Rowing boat");
    EXPECT_TRUE(waitFor([&] { return !list->isVisible(); })) << "it has nothing more to offer";
}
