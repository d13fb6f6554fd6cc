#include "app/gui/printout/check_printout.h"
#include "tests/app/gui/printed_text.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

namespace {

app::CheckPrintout sheetWith(int lines) {
    app::CheckPrintout printout;
    printout.club = "Quillmere Lake Rescue";
    printout.boat = "Teal";
    printout.phase = "launch check";
    printout.at = "06:40 today";
    printout.atIso = "2026-03-14T06:40:00.000Z";
    printout.aboard = {"Ada Marsh", "Bo Lake"};
    printout.signedBy = "Ada Marsh";
    printout.outcome = "Kit incomplete: knife";
    printout.urgent = "Two swimmers drift off";
    printout.cautions = {"The person in charge prevails."};
    printout.recordHead = "0123456789abcdef";
    for (int i = 0; i < lines; ++i) {
        app::CheckRow row;
        row.title = QString("thing %1").arg(i);
        row.aside = "one";
        row.remark = "a remark that takes some room on the line";
        row.section = i % 3 ? app::CheckRow::Section::Found : app::CheckRow::Section::Points;
        row.mark = app::Mark::Found;
        printout.rows.push_back(row);
    }
    return printout;
}

} // namespace

class CheckPrintoutOf : public testing::TestWithParam<int> {};

TEST_P(CheckPrintoutOf, isOnePageOfA4WithEverythingOnIt) {
    const support::ScratchFolder folder;
    const QString file = QString::fromStdString((folder / "printout.pdf").string());
    ASSERT_TRUE(app::savePrintout(file, sheetWith(GetParam())));
    const QString info = support::outputOf("pdfinfo", {file});
    EXPECT_TRUE(info.contains(QRegularExpression("Pages:\\s+1\\n"))) << info.toStdString();
    EXPECT_TRUE(info.contains("(A4)")) << info.toStdString();
    const QString text = support::outputOf("pdftotext", {"-layout", file, "-"}).simplified();
    for (const QString& words : {QString("Teal · launch check"), QString("Kit incomplete: knife"),
                                 QString("Urgent: Two swimmers drift off"), QString("signature: Ada Marsh"),
                                 QString("0123456789abcdef"), QString("thing %1").arg(GetParam() - 1)})
        EXPECT_TRUE(text.contains(words)) << words.toStdString();
}

INSTANTIATE_TEST_SUITE_P(FewAndMany, CheckPrintoutOf, testing::Values(3, 25, 90));

TEST(CheckPrintout, folderThatIsNotThereIsToldNotIgnored) {
    EXPECT_FALSE(app::savePrintout("/no/such/folder/printout.pdf", sheetWith(3)));
}
