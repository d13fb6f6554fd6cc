#include "app/gui/gear/office/gear_office.h"
#include "app/gui/widgets/plain_table.h"
#include "app/gui/widgets/plot_view.h"
#include "tests/app/gui/window_story.h"

#include <QAbstractAxis>
#include <QChart>
#include <QGraphicsTextItem>
#include <QRadioButton>

namespace {

/// The plots in the real window, as large as it is at first.
class PlotsStory : public support::WindowStory {
protected:
    void showPlots(const char* keys) {
        QTest::keySequence(&window(), QKeySequence(keys));
        ASSERT_TRUE(support::waitFor([&] { return window().gearOffice().isVisible(); }));
    }
    app::PlotView& plot(const char* name) { return *window().findChild<app::PlotView*>(name); }

    /// Words of the chart itself are cut off where it is low; it has none.
    static QStringList ownWordsOf(const app::PlotView& plot) {
        QStringList texts;
        for (const QGraphicsItem* item : plot.scene()->items())
            if (const auto* text = dynamic_cast<const QGraphicsTextItem*>(item); text && text->isVisible())
                texts << text->toPlainText();
        texts.removeAll(QString());
        return texts;
    }
    static void expectWhole(const app::PlotView& plot, const QString& of) {
        EXPECT_TRUE(support::waitFor([&] { return plot.isVisible() && plot.wordsAcross().size() >= 2; }));
        EXPECT_EQ(ownWordsOf(plot).join('|').toStdString(), "") << of.toStdString();
        EXPECT_GE(plot.wordsUp().size(), 2) << of.toStdString();
        EXPECT_FALSE(plot.wordsAcross().join('|').contains("1970")) << of.toStdString();
    }
};

} // namespace

TEST_F(PlotsStory, axesKeepTheirNumbersInTheWindowAsItOpens) {
    openWindow();
    showPlots("Alt+9");
    auto* table = window().findChild<app::PlainTable*>("replaceTable");
    ASSERT_TRUE(support::waitFor([&] { return table->model()->rowCount() > 0; }));
    EXPECT_FALSE(plot("stockPlot").isVisible()) << "the table has the room";
    emit table->rowPressed(table->chosen());
    const std::vector<std::pair<const char*, const char*>> plots{{"replaceStockChoice", "stockPlot"},
                                                                 {"replaceLifeChoice", "lifePlot"}};
    for (const auto& [choice, name] : plots) {
        window().findChild<QRadioButton*>(choice)->setChecked(true);
        for (int row = 0; row < table->model()->rowCount(); ++row) {
            table->setCurrentIndex(table->model()->index(row, 0));
            if (plot(name).isHidden()) continue; // there is no item of it
            expectWhole(plot(name), table->model()->index(row, 0).data().toString());
        }
    }
    showPlots("Alt+8");
    EXPECT_TRUE(support::waitFor([&] { return plot("dueChart").wordsUp().size() >= 2; }));
    EXPECT_EQ(ownWordsOf(plot("dueChart")).join('|').toStdString(), "");
    EXPECT_EQ(plot("dueChart").nothingYet(), QString());
}

namespace {

class EmptyPlots : public PlotsStory {
protected:
    void SetUp() override { ASSERT_TRUE(core::Club::create(file(), "Sandholm Lifeboats")); }
};

} // namespace

TEST_F(EmptyPlots, aClubWithoutKitIsToldSoInThePlaceOfAPlot) {
    openWindow();
    showPlots("Alt+9");
    for (const char* name : {"stockPlot", "lifePlot"}) {
        ASSERT_TRUE(support::waitFor([&] { return !plot(name).nothingYet().isEmpty(); })) << name;
        EXPECT_EQ(plot(name).accessibleDescription(), plot(name).nothingYet());
        for (const QGraphicsItem* item : plot(name).scene()->items())
            EXPECT_FALSE(item->isVisible()) << name;
    }
    showPlots("Alt+8");
    EXPECT_TRUE(support::waitFor([&] { return !plot("dueChart").nothingYet().isEmpty(); }));
}
