#pragma once

#include "app/gui/theme/marks.h"

#include <QAbstractButton>
#include <QStringList>

namespace app {

/// What the shed board says of one boat.
struct BoatWords {
    QString boat;
    QString condition;   ///< "kit ready, checked 06:40 today by …"
    QStringList reasons; ///< why not, or what to know
    QString next;        ///< what a press opens: "launch check"
    Mark mark = Mark::StillToFind;
};

/// One boat's strip over the whole width: its name large, its condition in words. A press opens what it needs
/// next.
class BoatStrip : public QAbstractButton {
    Q_OBJECT

public:
    explicit BoatStrip(const BoatWords& words, QWidget* parent = nullptr);

    QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    struct Layout;
    Layout layOut(int width) const;
    QStringList shownReasons() const;

    BoatWords m_words;
};

} // namespace app
