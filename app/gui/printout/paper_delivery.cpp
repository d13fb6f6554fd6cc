#include "app/gui/printout/paper_delivery.h"

#include "app/gui/club/club_thread.h"
#include "app/paper/a4_pdf.h"
#include "app/paper/whole_file.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QPdfWriter>
#include <QPrinter>
#include <QWidget>

namespace app {
namespace {

/// A file's name for a list of that day; no part of it leads into another folder.
QString nameOf(const ListTable& table) {
    return QStringLiteral("%1 %2")
        .arg(table.title, text(table.day.iso()))
        .replace(QLatin1Char('/'), QLatin1Char('-'));
}

core::Outcome writePdf(const QString& file, const Printable& paper) {
    bool isPainted = false;
    const QByteArray bytes =
        a4::pdf(paper.name, [&](QPdfWriter& writer) { isPainted = paper.paint(writer); });
    if (!isPainted)
        return core::Error{core::ErrorCode::SheetNotSaved, {paper.name.toStdString()}, file.toStdString()};
    return writeWholeFile(file.toStdString(), bytes, Paper::Sheet);
}

} // namespace

PaperDelivery::PaperDelivery(ClubThread& club, Choosers choosers, QWidget* window)
    : QObject(window)
    , m_club(club)
    , m_choosers(std::move(choosers))
    , m_window(window) {}

PaperDelivery::ReadPaper PaperDelivery::paperOf(const ReadList& read) {
    return [read](core::Club& club) -> core::Result<Printable> {
        auto table = read(club);
        if (!table) return table.error();
        const QString name = nameOf(*table);
        return Printable{name, [table = std::move(*table)](QPagedPaintDevice& device) {
                             return paintList(device, table);
                         }};
    };
}

template <class Value, class Then>
void PaperDelivery::take(const std::function<core::Result<Value>(core::Club&)>& read, Then then) {
    m_club.ask(this, read, [this, then](const core::Result<Value>& value) {
        if (value)
            then(*value);
        else
            emit done(value.error());
    });
}

template <class Write>
void PaperDelivery::deliver(Write write, const QString& sentence) {
    m_club.ask(
        this, [write = std::move(write)](core::Club&) { return write(); },
        [this, sentence](const core::Outcome& written) {
            emit done(written ? core::Result<QString>(sentence) : core::Result<QString>(written.error()));
        });
}

void PaperDelivery::save(const QString& proposed, const std::function<core::Outcome(const QString&)>& write) {
    const QString file = fileToSave(m_choosers, m_window, proposed);
    if (!file.isEmpty()) deliver([write, file] { return write(file); }, tr("Saved: %1").arg(text(file)));
}

void PaperDelivery::print(const ReadPaper& read) {
    take<Printable>(read, [this](const Printable& paper) {
        const auto printer = std::make_shared<QPrinter>(QPrinter::HighResolution);
        if (!m_choosers.printer || !m_choosers.printer(m_window, *printer)) return;
        m_club.ask(
            this, [paper, printer](core::Club&) { return paper.paint(*printer); },
            [this](bool isPainted) {
                emit done(isPainted ? tr("The sheet was sent to the printer.")
                                    : tr("The printer did not take the sheet."));
            });
    });
}

void PaperDelivery::savePdf(const ReadPaper& read) {
    take<Printable>(read, [this](const Printable& paper) {
        save(paper.name + QStringLiteral(".pdf"),
             [paper](const QString& file) { return writePdf(file, paper); });
    });
}

void PaperDelivery::saveCsv(const ReadList& read) {
    take<ListTable>(read, [this](const ListTable& table) {
        save(nameOf(table) + QStringLiteral(".csv"),
             [table](const QString& file) { return writeListCsv(file.toStdString(), table); });
    });
}

void PaperDelivery::copy(const ReadList& read) {
    take<ListTable>(read, [this](const ListTable& table) {
        QGuiApplication::clipboard()->setText(messageOf(table));
        emit done(tr("Copied as text: %1, %2. Paste it into a message.")
                      .arg(table.title, counted(static_cast<int>(table.lines.size()),
                                                QT_TRANSLATE_N_NOOP("Words", "%n line"),
                                                QT_TRANSLATE_N_NOOP("Words", "%n lines"))));
    });
}

} // namespace app
