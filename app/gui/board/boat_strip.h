#pragma once

#include "app/gui/theme/marks.h"

#include <QAbstractButton>
#include <QStringList>

class QToolButton;

namespace app {

/// What the shed board says of one boat.
struct BoatWords {
    QString boat;
    QString condition;   ///< "kit ready, checked 06:40 today by …"
    QStringList reasons; ///< why not, or what to know
    QString next;        ///< what a press opens: "launch check"
    Mark mark = Mark::StillToFind;
};

/// One boat's strip over the whole width: its name large, its condition in words and the first reason in two
/// lines at most. A press opens what it needs next; a button on it, and the right arrow key, show all
/// reasons.
class BoatStrip : public QAbstractButton {
    Q_OBJECT

public:
    explicit BoatStrip(const BoatWords& words, QWidget* parent = nullptr);

    QSize sizeHint() const override;
    const BoatWords& words() const { return m_words; }
    bool isOpen() const { return m_isOpen; }
    void setOpen(bool open); ///< all reasons are shown

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    struct Layout;
    Layout layOut(int width) const;
    QString shownReasons(int width) const;
    bool hasMore(int width) const;
    void fit();

    BoatWords m_words;
    QToolButton* m_more;
    bool m_isOpen = false;
};

} // namespace app
