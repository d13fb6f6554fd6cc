#pragma once

#include "app/paper/marks.h"
#include "core/base/calendar_day.h"
#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

class QPagedPaintDevice;

namespace core {
struct ItemName;
}

namespace app {

/// One cell of a list: what people read, and where a spreadsheet is better served by something else (an ISO
/// day, a code in one piece), that.
struct ListCell {
    ListCell(QString forPeople) // NOLINT(google-explicit-constructor): most cells are their words
        : words(std::move(forPeople))
        , data(words) {}
    ListCell(QString forPeople, QString forSheets)
        : words(std::move(forPeople))
        , data(std::move(forSheets)) {}

    QString words;
    QString data;
};

/// An item's tag code, which is not wrapped between its groups; for sheets in one piece.
ListCell codeCell(const core::ItemName& item);

/// One line; its mark stands before it on paper, and some cell says the same in words.
struct ListLine {
    std::optional<Mark> mark;
    std::vector<ListCell> cells; ///< as many as there are columns; of people's texts, as text() shows them
};

/// A list that is printed, saved or sent: once for paper, CSV and message. Holds values only.
struct ListTable {
    QString club;
    QString title;
    core::CalendarDay day = core::CalendarDay::fromNumber(1); ///< of which it tells
    QString summary; ///< the sentence above it; of an empty list all that there is
    QStringList columns;
    std::vector<ListLine> lines;
    QStringList cautions;
    bool needsSomebody = false; ///< something in it is to be done
};

/// A heading, then a record for each line (RFC 4180, CRLF, UTF-8); no cell is run as a formula.
std::string csvOf(const ListTable& table);
/// Plain text to send to somebody: title and day, the summary, a line each.
QString messageOf(const ListTable& table);

/// Draws it on pages of A4, black on white, upright or turned as its columns need; each page has the club,
/// the list, the day and its number. Nothing is cut: what is long goes on in the next line. False when the
/// device cannot be painted on. Any thread with a QGuiApplication. `pages`: how many it took.
bool paintList(QPagedPaintDevice& device, const ListTable& table, int* pages = nullptr);
/// The same as a PDF; the file is whole or as it was: DiskFailed. Returns the number of pages.
core::Result<int> writeListPdf(const std::filesystem::path& file, const ListTable& table);
core::Outcome writeListCsv(const std::filesystem::path& file, const ListTable& table);

} // namespace app
