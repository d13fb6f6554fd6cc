#pragma once

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTest>

#include "app/gui/club/club_thread.h"
#include "app/gui/gear/office/gear_office.h"
#include "app/gui/gear/office/gear_pages.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/widgets/gear_page.h"
#include "app/gui/widgets/plain_table.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "core/base/result.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "tests/app/gui/demo_club.h"

#include <gtest/gtest.h>

#include <QAbstractItemModelTester>

#include <memory>

namespace support {

/// The gear officer's pages on the demo club, used by keys as a person does.
class GearStory : public DemoClub {
protected:
    QString pathOf(const char* name) const { return QString::fromStdString((folder() / name).string()); }

    /// A signed launch or return check, whatever is short.
    static void check(core::Club& club, const std::string& boat, core::Phase phase, const std::string& by,
                      const std::vector<std::string>& codes, const char* at) {
        const auto open = club.checks().open(boat, phase, moment(at));
        ASSERT_TRUE(open);
        ASSERT_TRUE(club.checks().giveNames(open->check, {by}, moment(at)));
        for (const std::string& code : codes)
            ASSERT_TRUE(club.checks().scan(open->check, core::ScannedText::typed(code), core::SeenBy::Typed,
                                           moment(at)));
        ASSERT_TRUE(club.checks().sign(open->check, by, "for the test", moment(at)));
    }

    void openOffice(const QString& page, app::Choosers choosers = {}) {
        m_club = std::make_unique<app::ClubThread>();
        bool isOpen = false;
        m_club->open(file(), [&](const core::Outcome& opened) { isOpen = static_cast<bool>(opened); });
        ASSERT_TRUE(waitFor([&] { return isOpen; }));
        m_office = std::make_unique<app::GearOffice>();
        app::addGearPages(*m_office, {*m_club, [] { return moment(); }, m_sounds, std::move(choosers),
                                      [this] { return m_isCameraWanted; }});
        m_office->resize(1280, 800);
        m_office->showPage(page);
        m_office->show();
        m_office->activateWindow();
        ASSERT_TRUE(waitFor([&] { return m_office->isActiveWindow(); }));
        settle();
        for (auto* model : m_office->findChildren<app::RowListModel*>())
            watch(*model);
        for (auto* model : m_office->findChildren<app::PlainTableModel*>())
            watch(*model);
    }

    void TearDown() override {
        m_office.reset();
        m_club.reset();
    }

    app::GearOffice& office() { return *m_office; }

    template <class Widget = QWidget>
    Widget* child(const char* name) {
        auto* page = m_office->page(m_office->currentPage());
        auto* onPage = page ? page->findChild<Widget*>(name) : nullptr;
        return onPage ? onPage : m_office->findChild<Widget*>(name);
    }
    QString textOf(const char* label) { return child<QLabel>(label)->text(); }

    /// Until everything asked of the club file is done and shown, also what its answers ask anew.
    void settle() {
        for (int round = 0; round < 4; ++round) {
            bool isDone = false;
            m_club->ask(
                m_office.get(), [](core::Club&) { return true; }, [&](bool) { isDone = true; });
            ASSERT_TRUE(waitFor([&] { return isDone; }));
        }
    }

    void focus(const char* name) {
        auto* widget = child(name);
        ASSERT_NE(widget, nullptr) << name;
        ASSERT_TRUE(widget->isVisible() && widget->isEnabled()) << name;
        // Without a display no window is active any more once a list of names has closed.
        m_office->activateWindow();
        ASSERT_TRUE(waitFor([&] { return m_office->isActiveWindow(); }));
        widget->setFocus(Qt::TabFocusReason);
        ASSERT_TRUE(widget->hasFocus() || widget->isAncestorOf(QApplication::focusWidget())) << name;
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        ASSERT_NE(QApplication::focusWidget(), nullptr) << "nothing has the keyboard";
        QTest::keyClick(QApplication::focusWidget(), key, modifiers);
        settle();
    }
    void type(const QString& text) {
        ASSERT_NE(QApplication::focusWidget(), nullptr) << "nothing has the keyboard";
        QTest::keyClicks(QApplication::focusWidget(), text);
    }
    void typeCode(const QString& code) {
        type(code);
        press(Qt::Key_Return);
    }
    void typeInto(const char* field, const QString& text) {
        focus(field);
        press(Qt::Key_A, Qt::ControlModifier);
        type(text);
    }
    /// Goes down the choices until it stands on the wanted one.
    void choose(const char* box, const QString& wanted) {
        focus(box);
        auto* choices = child<QComboBox>(box);
        press(Qt::Key_Home);
        for (int i = 0; i < choices->count() && choices->currentText() != wanted; ++i)
            press(Qt::Key_Down);
        ASSERT_EQ(choices->currentText(), wanted);
    }
    void pressButton(const char* name) {
        focus(name);
        press(Qt::Key_Space);
    }

    /// What asks once more: a press that follows too soon is the second half of a double click.
    void pressButtonTwice(const char* name) {
        pressButton(name);
        const std::chrono::milliseconds interval(QApplication::doubleClickInterval() + 10);
        EXPECT_FALSE(waitFor([] { return false; }, interval));
        pressButton(name);
    }

    std::vector<app::ListRow> rowsIn(const char* list) {
        return static_cast<app::RowListModel*>(child<app::RowList>(list)->model())->rows();
    }
    std::optional<app::ListRow> rowOf(const char* list, const QString& code) {
        for (const app::ListRow& row : rowsIn(list))
            if (row.code == code) return row;
        return std::nullopt;
    }
    /// What a table shows, in its order.
    std::vector<app::TableRow> rowsInTable(const char* table) {
        const auto* model = static_cast<app::PlainTableModel*>(child<app::PlainTable>(table)->model());
        std::vector<app::TableRow> rows;
        for (int row = 0; row < model->rowCount(); ++row)
            rows.push_back(model->shown(row));
        return rows;
    }
    /// Under which heading a code stands; empty when it is not there.
    QString headingOf(const char* list, const QString& code) {
        QString heading;
        for (const app::ListRow& row : rowsIn(list)) {
            if (row.isHeading) heading = row.title;
            if (row.code == code) return heading;
        }
        return {};
    }

    bool m_isCameraWanted = false; ///< whether a page starts the camera by itself

private:
    static void watch(QAbstractItemModel& model) {
        new QAbstractItemModelTester(&model, QAbstractItemModelTester::FailureReportingMode::Fatal, &model);
    }

    app::Sounds m_sounds;
    std::unique_ptr<app::ClubThread> m_club;
    std::unique_ptr<app::GearOffice> m_office;
};

} // namespace support
