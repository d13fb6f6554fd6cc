#pragma once

#include <QImage>
#include <QList>
#include <QSize>
#include <QString>
#include <QStringList>

class QWidget;

namespace app {

class MainWindow;

/// The picture in 256 colours, those that it has most of; for files that are a third as big.
QImage inFewColours(const QImage& picture);

/// Pictures of a window as files, `NAME-THEME-WIDTHxHEIGHT.png`, in a folder that is there.
class WindowPictures {
public:
    WindowPictures(QWidget& window, QString folder);

    /// The page shown, in each of the themes and sizes. False when a file could not be written.
    bool take(const QString& name, const QStringList& themes, const QList<QSize>& sizes);

private:
    QWidget& m_window;
    QString m_folder;
};

/// The board and the launch check of its first boat, on a copy of the club file. For a machine without a
/// display.
bool takeWindowPictures(MainWindow& window, const QString& folder, const QString& clubFile);

} // namespace app
