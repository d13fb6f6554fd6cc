#include "app/desk/window_pictures.h"

#include "app/desk/board/shed_board.h"
#include "app/desk/check/check_page.h"
#include "app/desk/main_window.h"

#include <QCoreApplication>
#include <QDeadlineTimer>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <functional>

namespace app {
namespace {

bool runUntil(const std::function<bool()>& holds, int limitMs = 20000) {
    const QDeadlineTimer deadline(limitMs);
    while (!holds() && !deadline.hasExpired())
        QCoreApplication::processEvents(QEventLoop::AllEvents, 20);
    return holds();
}

} // namespace

WindowPictures::WindowPictures(MainWindow& window, QString folder)
    : m_window(window)
    , m_folder(std::move(folder)) {}

bool WindowPictures::take(const QString& name, const QStringList& themes, const QList<QSize>& sizes) {
    bool isWritten = true;
    for (const QString& theme : themes)
        for (const QSize& size : sizes) {
            m_window.setTheme(theme);
            m_window.resize(size);
            runUntil([] { return false; }, 150); // layouts settle
            isWritten &= m_window.grab().save(QStringLiteral("%1/%2-%3-%4x%5.png")
                                                  .arg(m_folder, name, theme)
                                                  .arg(size.width())
                                                  .arg(size.height()));
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
