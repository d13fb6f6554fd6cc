#pragma once

#include <QImage>
#include <QPointer>
#include <QString>
#include <QWidget>

#include "app/gui/widgets/second_press.h"

#include <functional>

class QPushButton;

namespace app {

/// A picture as large as the window has room, over all that the window shows. Any press, and Escape, puts it
/// away and gives the keyboard back. It goes by itself.
class PictureView : public QWidget {
    Q_OBJECT

public:
    /// `words`: what it is of, beneath it and read aloud.
    PictureView(const QImage& picture, const QString& words, QWidget& window);
    /// A button beneath it; a second press, which `sure` asks for, acts and puts it away.
    void offer(const QString& words, const QString& sure, std::function<void()> act);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override; ///< the window becomes another size

private:
    void putAway();
    void placeButton();

    QPushButton* m_button = nullptr;
    SecondPress m_press;
    QImage m_picture;
    QString m_words;
    QPointer<QWidget> m_before; ///< had the keyboard
};

} // namespace app
