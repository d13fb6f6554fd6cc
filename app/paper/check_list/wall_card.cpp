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
#include <QRegularExpression>

namespace app {
namespace {

using Kind = SheetEntry::Kind;

struct WallCardText {
    Q_DECLARE_TR_FUNCTIONS(CheckList)
};

constexpr double largestScale = 2.2;

/// A note that says so, in the words of this program's languages; the rest of the note is left in `note`.
bool takeCommonPractice(QString& note) {
    static const QRegularExpression said(
        QStringLiteral("\\s*(common practice|gängige Praxis|übliche Praxis)\\s*"
                       "(, no source)?[;,.:]?\\s*"),
        QRegularExpression::CaseInsensitiveOption);
    const qsizetype before = note.size();
    note.remove(said);
    return note.size() != before;
}

class Card {
public:
    void add(const QString& words, const std::string& said) {
        QString note = text(said);
        const bool isCommon = takeCommonPractice(note);
        m_hasCommon = m_hasCommon || isCommon;
        m_sheet.body.push_back({.words = isCommon ? words + QStringLiteral(" *") : words, .note = note});
    }
    void head(const QString& words) { m_sheet.body.push_back({.kind = Kind::Heading, .words = words}); }

    void addPoints(const QString& heading, const std::vector<core::BoatPoint>& points) {
        if (points.empty()) return;
        head(heading);
        for (const core::BoatPoint& point : points)
            add(pointInWords(point), point.note);
    }

    Sheet made(const CheckList& list) && {
        m_sheet.running = WallCardText::tr("%1 · as asked on %2").arg(list.club, inWords(list.day));
        const QString name = list.boatClass.empty() ? text(list.name) : text(list.boatClass);
        m_sheet.head.push_back(
            {.kind = Kind::Title,
             .words = list.differs ? WallCardText::tr("%1: %2").arg(name, text(list.name)) : name});
        addPoints(WallCardText::tr("Before"), list.launch);
        if (!list.lines.empty()) head(WallCardText::tr("Kit"));
        for (const CheckList::Line& line : list.lines)
            add(lineInWords(line), line.line.note);
        addPoints(WallCardText::tr("After"), list.back);
        QString foot = launchCaution() + QLatin1Char(' ') + whoPrevails();
        if (m_hasCommon)
            foot.prepend(WallCardText::tr("* common practice, no published source.") + QLatin1Char(' '));
        m_sheet.foot.push_back({.kind = Kind::Small, .words = foot});
        return std::move(m_sheet);
    }

private:
    Sheet m_sheet;
    bool m_hasCommon = false;
};

/// The largest type in which all stands on one page, in one column or two.
SheetLayout layoutOfCard(QPainter& painter, const Sheet& sheet) {
    for (double scale = largestScale; scale >= leastSheetScale; scale -= 0.05)
        for (const int columns : {1, 2})
            if (pagesOf(painter, sheet, {scale, columns}) == 1) return {scale, columns};
    return {leastSheetScale, 2};
}

} // namespace

bool paintWallCard(QPagedPaintDevice& device, const CheckList& list, int* pages) {
    const Sheet sheet = Card().made(list);
    return paintSheet(
        device, sheet, [&](QPainter& painter) { return layoutOfCard(painter, sheet); }, pages);
}

core::Result<int> writeWallCard(const std::filesystem::path& file, const CheckList& list) {
    int pages = 0;
    const QByteArray bytes = a4::pdf(WallCardText::tr("Wall card of %1").arg(text(list.boatClass)),
                                     [&](QPdfWriter& writer) { paintWallCard(writer, list, &pages); });
    const core::Outcome saved = writeWholeFile(file, bytes, Paper::Sheet);
    if (!saved) return saved.error();
    return pages;
}

} // namespace app
