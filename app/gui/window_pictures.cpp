#include "app/gui/window_pictures.h"

#include "app/gui/board/shed_board.h"
#include "app/gui/check/check_page.h"
#include "app/gui/main_window.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <QApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QFile>
#include <QHash>
#include <QTemporaryDir>

#include <algorithm>
#include <functional>

namespace app {
namespace {

constexpr int smallest = 0; ///< of QImage::save's scale for PNG, where less is smaller

/// Colours that differ no more than the eye sees between neighbours are of one kind.
constexpr QRgb kindOfShade = 0xfff8f8f8;

struct Shade {
    qint64 count = 0, red = 0, green = 0, blue = 0;

    void add(QRgb colour) {
        ++count;
        red += qRed(colour);
        green += qGreen(colour);
        blue += qBlue(colour);
    }
    QRgb mean() const {
        return qRgb(static_cast<int>(red / count), static_cast<int>(green / count),
                    static_cast<int>(blue / count));
    }
};

bool runUntil(const std::function<bool()>& holds, int limitMs = 20000) {
    const QDeadlineTimer deadline(limitMs);
    while (!holds() && !deadline.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return holds();
}

} // namespace

QImage inFewColours(const QImage& picture) {
    const QImage full = picture.convertToFormat(QImage::Format_RGB32);
    QHash<QRgb, Shade> byKind;
    for (int y = 0; y < full.height(); ++y) {
        const auto* line = reinterpret_cast<const QRgb*>(full.constScanLine(y));
        for (int x = 0; x < full.width(); ++x)
            byKind[line[x] & kindOfShade].add(line[x]);
    }
    QList<Shade> shades = byKind.values();
    std::sort(shades.begin(), shades.end(), [](const Shade& a, const Shade& b) { return a.count > b.count; });
    QList<QRgb> colours;
    for (const Shade& shade : shades.mid(0, 256))
        colours << shade.mean();
    return full.convertToFormat(QImage::Format_Indexed8, colours, Qt::ThresholdDither);
}

WindowPictures::WindowPictures(QWidget& window, QString folder)
    : m_window(window)
    , m_folder(std::move(folder)) {}

bool WindowPictures::take(const QString& name, const QStringList& themes, const QList<QSize>& sizes) {
    bool isWritten = true;
    for (const QString& theme : themes)
        for (const QSize& size : sizes) {
            dress(*qApp, paletteOf(theme));
            m_window.resize(size);
            runUntil([] { return false; }, 150); // layouts settle
            const QString file = QStringLiteral("%1/%2-%3-%4x%5.png")
                                     .arg(m_folder, name, theme)
                                     .arg(size.width())
                                     .arg(size.height());
            isWritten &= inFewColours(m_window.grab().toImage()).save(file, "PNG", smallest);
        }
    return isWritten;
}

bool takeWindowPictures(MainWindow& window, const QString& folder, const QString& clubFile) {
    const QTemporaryDir scratch;
    const QString copy = scratch.filePath("club.tholepin");
    if (!QDir().mkpath(folder) || !QFile::copy(clubFile, copy)) return false;
    window.setCameraWanted(false);
    window.show();
    bool isShown = false;
    const auto shown = QObject::connect(&window, &MainWindow::boardShown, &window, [&] { isShown = true; });
    window.openClub(copy.toStdString());
    const bool isOpen = runUntil([&] { return isShown; });
    QObject::disconnect(shown);
    if (!isOpen) return false;
    WindowPictures pictures(window, folder);
    const QStringList themes{"light", "sun", "dark"};
    bool isWritten = pictures.take("board", themes, {{1280, 800}});
    if (window.board().state().boats.empty()) return isWritten;
    const core::BoatCondition& first = window.board().state().boats.front();
    window.startCheck(QString::fromStdString(first.boat),
                      nextPhase(first, window.board().state().unfinished));
    runUntil([&] { return window.checkPage().session() && window.checkPage().session()->state(); });
    return pictures.take("check", themes, {{1280, 800}}) && isWritten;
}

} // namespace app
