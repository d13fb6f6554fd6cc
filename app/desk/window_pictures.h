#pragma once

#include <QList>
#include <QSize>
#include <QString>
#include <QStringList>

namespace app {

class MainWindow;

/// Pictures of the window as files, `NAME-THEME-WIDTHxHEIGHT.png`, in a folder that is there.
class WindowPictures {
public:
    WindowPictures(MainWindow& window, QString folder);

    /// The page shown, in each of the themes and sizes. False when a file could not be written.
    bool take(const QString& name, const QStringList& themes, const QList<QSize>& sizes);

private:
    MainWindow& m_window;
    QString m_folder;
};

/// The board and the launch check of its first boat, on a copy of the club file. For a machine without a
/// display.
bool takeWindowPictures(MainWindow& window, const QString& folder, const QString& clubFile);

} // namespace app
