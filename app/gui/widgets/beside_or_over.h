#pragma once

#include <QWidget>

class QPushButton;

namespace app {

/// A list and what is opened from it: beside it where there is room, over it where there is not. Its button,
/// or Escape, leaves it.
class BesideOrOver : public QWidget {
    Q_OBJECT

public:
    /// Both become its children; `widthForBoth`: pixels from which on there is room. `prefix` of the name of
    /// its button.
    BesideOrOver(const QByteArray& prefix, QWidget* list, QWidget* side, int widthForBoth, QWidget* parent);

    void open();  ///< what is at the side comes into view
    void close(); ///< the list alone
    /// "Back to the list", for the page to put where it has room; in view while something is open.
    QPushButton* backButton() const { return m_back; }
    bool isOpen() const { return m_isOpen; }
    bool isOver() const { return m_isOpen && !hasRoomForBoth(); }
    bool hasRoomForBoth() const { return width() >= m_widthForBoth; }
    QSize minimumSizeHint() const override; ///< of one of them: both together ask for no more room
    bool hasHeightForWidth() const override { return false; } ///< the least height is in `minimumSizeHint`

signals:
    void arranged(); ///< what is in view is another part, or there is room for both now, or no more
    void left();     ///< by the button or Escape; it is closed already

protected:
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    void arrange();
    void leave();

    QWidget* m_list;
    QWidget* m_side;
    QPushButton* m_back;
    int m_widthForBoth;
    bool m_isOpen = false;
};

} // namespace app
