#pragma once

#include <QKeySequence>
#include <QMenu>
#include <QPointer>

#include <vector>

class QPushButton;

namespace app {

/// The buttons of the page that is shown, as lines of a menu, each with keys that press it from anywhere in
/// the window. A line is there while its button is in view, and enabled exactly as it is; a button's keys are
/// the same as long as its page lives, whatever else is in view, so that a hand may learn them.
class PageMenu : public QMenu {
    Q_OBJECT

public:
    explicit PageMenu(QWidget* parent = nullptr);

    void showPage(QWidget* page); ///< null: none, and the menu is off

    /// Of the button that comes at that place (from 0) when Tab goes through the page's buttons, hidden ones
    /// too; empty behind the last.
    static QKeySequence keysOf(std::size_t place);

protected:
    /// Looks for what changes on the page's buttons; takes nothing.
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Line {
        QPointer<QPushButton> button;
        QKeySequence keys;

        bool operator==(const Line&) const = default;
    };

    std::vector<Line> linesOfPage() const;
    void refreshSoon();
    void refresh();
    void build(const std::vector<Line>& lines);

    QPointer<QWidget> m_page;
    std::vector<Line> m_lines;
    bool m_isStale = false;
};

} // namespace app
