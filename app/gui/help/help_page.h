#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/camera/scan_taker.h"

class QTextBlock;
class QTextBrowser;
class QUrl;

namespace app {

class SaidLabel;

/// The shipped documents, as text in the window. Links lead from one to the other, nowhere else.
class HelpPage : public QWidget, public ScanTaker {
    Q_OBJECT

public:
    explicit HelpPage(QWidget* parent = nullptr);

    /// What tells of that page (see helpOf), in the language that is spoken.
    void showPage(const QString& id);
    void sayOfScan(const QString& sentence) override;

    QString document() const { return m_document; } ///< "crew.md"
    QString heading() const;                        ///< the one at the top of the view

signals:
    void leaveWanted();

protected:
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void build();
    void open(const QString& document, const QString& heading);
    void follow(const QUrl& link);
    void scroll();
    QTextBlock blockOf(const QString& heading) const;

    QTextBrowser* m_text;
    SaidLabel* m_said;
    QString m_document;
    QString m_heading; ///< to be seen
};

} // namespace app
