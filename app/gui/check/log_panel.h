#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QFrame>

#include "core/register/boat.h"

#include <vector>

class QLabel;
class QPushButton;
class QScrollArea;
class QVBoxLayout;

namespace app {

/// What earlier crews wrote of the boat and is still open, and what was done last, all in full: where there
/// is much of it, it scrolls. Once read the open entries fold away; what was done stays.
class LogPanel : public QFrame {
    Q_OBJECT

public:
    explicit LogPanel(QWidget* parent = nullptr);

    /// Open entries first, then the newest.
    void setEntries(const std::vector<core::LogEntry>& entries);
    void setRead(bool read);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void addEntry(const core::LogEntry& entry);
    QString summaryInWords() const;
    QString lastDoneInWords() const;
    void addLine(const QString& text, const char* role);
    void fit();

    int m_open = 0;
    bool m_read = false;
    std::vector<core::LogEntry> m_entries;
    QWidget* m_lines = nullptr;
    QVBoxLayout* m_lineLayout = nullptr;
    QLabel* m_done; ///< what was done about the entry that was closed last
    QScrollArea* m_scroll;
    QLabel* m_summary;
    QPushButton* m_readButton;
};

} // namespace app
