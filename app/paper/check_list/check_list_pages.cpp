#include "app/paper/check_list/check_list.h"

#include "app/paper/a4_pdf.h"
#include "app/paper/check_list/check_list_words.h"
#include "app/paper/check_list/sheet_flow.h"
#include "app/paper/whole_file.h"
#include "app/text/cautions.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QPdfWriter>

#include <algorithm>

namespace app {
namespace {

using Kind = SheetEntry::Kind;

struct CheckListPagesText {
    Q_DECLARE_TR_FUNCTIONS(CheckList)
};

void addPoints(Sheet& sheet, const QString& heading, const std::vector<core::BoatPoint>& points) {
    if (points.empty()) return;
    sheet.body.push_back({.kind = Kind::Heading, .words = heading});
    for (const core::BoatPoint& point : points) {
        const bool isLook = point.kind == core::PointKind::Look;
        sheet.body.push_back({.words = pointInWords(point),
                              .note = text(point.note),
                              .boxes = isLook ? 1 : 0,
                              .hasBlank = !isLook});
    }
}

void addKit(Sheet& sheet, const CheckList& list) {
    if (list.lines.empty()) return;
    sheet.body.push_back({.kind = Kind::Heading,
                          .words = CheckListPagesText::tr("Kit, aboard"),
                          .aside = CheckListPagesText::tr("back")});
    for (const CheckList::Line& line : list.lines)
        sheet.body.push_back({.words = lineInWords(line),
                              .note = text(line.line.note),
                              .boxes = line.line.quantity,
                              .boxesBehind = line.line.quantity});
}

QStringList cautionsOf(const CheckList& list) {
    QStringList cautions{launchCaution(), jacketCaution()};
    if (std::any_of(list.lines.begin(), list.lines.end(),
                    [](const CheckList::Line& line) { return line.isWorn; }))
        cautions << fitCaution();
    for (const auto* points : {&list.launch, &list.back})
        if (std::any_of(points->begin(), points->end(), isEngineRun) && !cautions.contains(engineCaution()))
            cautions << engineCaution();
    return cautions << whoPrevails();
}

Sheet sheetOf(const CheckList& list) {
    Sheet sheet;
    sheet.running = CheckListPagesText::tr("%1 · check list of %2, as asked on %3")
                        .arg(list.club, text(list.name), inWords(list.day));
    sheet.head.push_back({.kind = Kind::Title, .words = text(list.name)});
    const auto fill = [](std::vector<SheetEntry>& to, const QStringList& fields) {
        to.push_back({.kind = Kind::ToFill, .words = {}, .fields = fields});
    };
    fill(sheet.head, {CheckListPagesText::tr("day"), CheckListPagesText::tr("launched at"),
                      CheckListPagesText::tr("back at")});
    fill(sheet.head, {CheckListPagesText::tr("driver"), CheckListPagesText::tr("crew")});
    fill(sheet.head, {CheckListPagesText::tr("crew"), CheckListPagesText::tr("crew")});
    sheet.body.push_back({.kind = Kind::Heading,
                          .words = list.log.isEmpty() ? CheckListPagesText::tr("Nothing is open in the log")
                                                      : CheckListPagesText::tr("Open in the log")});
    for (const QString& entry : list.log)
        sheet.body.push_back({.kind = Kind::Look, .words = entry});
    addPoints(sheet, CheckListPagesText::tr("Before the launch"), list.launch);
    addKit(sheet, list);
    addPoints(sheet, CheckListPagesText::tr("After the return"), list.back);
    const QString later = CheckListPagesText::tr(
        "What is ticked here is in no record yet: type it into the program when it runs again.");
    sheet.foot.push_back(
        {.kind = Kind::Small, .words = later + QLatin1Char(' ') + cautionsOf(list).join(QLatin1Char(' '))});
    fill(sheet.foot, {CheckListPagesText::tr("signature"), CheckListPagesText::tr("person in charge")});
    return sheet;
}

/// Smaller type, then two columns, then more pages.
SheetLayout layoutOf(QPainter& painter, const Sheet& sheet) {
    for (const int columns : {1, 2})
        for (double scale = 1; scale >= leastSheetScale; scale -= 0.03)
            if (pagesOf(painter, sheet, {scale, columns}) == 1) return {scale, columns};
    return {leastSheetScale, 2};
}

} // namespace

bool paintCheckList(QPagedPaintDevice& device, const CheckList& list, int* pages) {
    const Sheet sheet = sheetOf(list);
    return paintSheet(
        device, sheet, [&](QPainter& painter) { return layoutOf(painter, sheet); }, pages);
}

core::Result<int> writeCheckList(const std::filesystem::path& file, const CheckList& list) {
    int pages = 0;
    const QByteArray bytes = a4::pdf(CheckListPagesText::tr("Check list of %1").arg(text(list.name)),
                                     [&](QPdfWriter& writer) { paintCheckList(writer, list, &pages); });
    const core::Outcome saved = writeWholeFile(file, bytes, Paper::Sheet);
    if (!saved) return saved.error();
    return pages;
}

} // namespace app
