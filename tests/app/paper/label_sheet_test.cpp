#include "app/paper/label_sheet.h"

#include "app/flow/seen_text.h"
#include "scanner/files/read_path.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QPointF>
#include <QProcess>

#include <map>

namespace {

std::vector<core::TagLabel> tags() {
    return {{"KGYD21XNA5", "life jacket", "Bittern"},
            {"KTZCYVVPR4", "life jacket", "Bittern"},
            {"KPZ36AE62R", "rescue tube", "Bittern"},
            {"KDVK4H6SRX", "tow line", ""}};
}

/// The codes of a sheet's first page with the middle of each symbol, in millimetres from the page's corner;
/// the page painted by poppler, which shares no code with the writer.
std::map<std::string, QPointF> placesOn(const std::filesystem::path& pdf,
                                        const std::filesystem::path& folder) {
    constexpr int dotsPerInch = 300;
    const std::filesystem::path page = folder / "page";
    EXPECT_EQ(QProcess::execute("pdftoppm", {"-r", QString::number(dotsPerInch), "-gray", "-png", "-f", "1",
                                             "-l", "1", "-singlefile", QString::fromStdString(pdf.string()),
                                             QString::fromStdString(page.string())}),
              0);
    scanner::ReadPathOptions options;
    options.reading.budget = std::chrono::milliseconds(0);
    options.reading.isTag = app::isTagText;
    std::map<std::string, QPointF> places;
    for (const scanner::PathReading& reading : scanner::readPath(page.string() + ".png", options))
        for (const scanner::SeenCode& code : reading.seen) {
            QPointF sum;
            for (const auto& corner : code.corners)
                sum += QPointF(corner.x, corner.y);
            places[code.text] = sum / 4 * 25.4 / dotsPerInch;
        }
    return places;
}

class EachPaper : public testing::TestWithParam<std::size_t> {
protected:
    const app::LabelPaper& paper() const { return app::labelPapers()[GetParam()]; }
};

} // namespace

TEST_P(EachPaper, liesWithinA4WithoutOverlap) {
    EXPECT_GE(paper().left(), -0.01);
    EXPECT_GE(paper().top(), -0.01);
    EXPECT_GE(paper().acrossPitch, paper().width);
    EXPECT_GE(paper().downPitch, paper().height);
}

TEST_P(EachPaper, everySymbolStandsWithinItsLabelAndIsReadAgain) {
    const support::ScratchFolder folder;
    const double mm = std::min(20.0, app::biggestSymbolOn(paper()));
    const auto sheets = app::writeTagsOnLabels(folder / "labels.pdf", tags(), paper(), mm, 1);
    ASSERT_TRUE(sheets);
    EXPECT_EQ(*sheets, 1);
    const auto places = placesOn(folder / "labels.pdf", folder.path());
    ASSERT_EQ(places.size(), tags().size());
    for (std::size_t i = 0; i < tags().size(); ++i) {
        const int place = static_cast<int>(i) + 1;
        const double left = paper().left() + place % paper().columns * paper().acrossPitch;
        const double top = paper().top() + place / paper().columns * paper().downPitch;
        const QPointF middle = places.at(tags()[i].code);
        EXPECT_GT(middle.x() - mm / 2, left) << place;
        EXPECT_LT(middle.x() + mm / 2, left + paper().width) << place;
        EXPECT_GT(middle.y() - mm / 2, top) << place;
        EXPECT_LT(middle.y() + mm / 2, top + paper().height) << place;
    }
}

INSTANTIATE_TEST_SUITE_P(LabelSheet, EachPaper, testing::Range<std::size_t>(0, app::labelPapers().size()));

TEST(LabelSheet, goesOnToTheNextSheetAndBeginsWhereOneIsUsed) {
    const support::ScratchFolder folder;
    const app::LabelPaper& eight = app::labelPapers().front();
    ASSERT_EQ(eight.perSheet(), 8);
    EXPECT_EQ(*app::writeTagsOnLabels(folder / "a.pdf", tags(), eight, 30, 4), 1);
    EXPECT_EQ(*app::writeTagsOnLabels(folder / "b.pdf", tags(), eight, 30, 5), 2);
}

TEST(LabelSheet, folderThatIsNotThereIsToldNotIgnored) {
    EXPECT_FALSE(app::writeTagsOnLabels("/no/such/folder/a.pdf", tags(), app::labelPapers().front(), 30));
}
