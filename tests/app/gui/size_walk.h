#pragma once

#include "app/gui/widgets/page_scroll.h"
#include "tests/app/gui/layout_faults.h"

#include <QCoreApplication>
#include <QEvent>
#include <QPixmap>
#include <QRegularExpression>
#include <QScrollBar>
#include <QSize>
#include <QStackedWidget>
#include <QStringList>
#include <QWidget>

#include <map>
#include <string>

namespace support {

/// Looks at one page after the other in every size of window, and keeps what is badly laid out. A screen of
/// 1920×1080 that is shown 1.5 or 2 times as large is 1280×720 and 960×540 of the window's own pixels.
class SizeWalk {
public:
    /// `above`: height of what stands in the window over `root`, which is shown already.
    explicit SizeWalk(QWidget& root, int above = 0)
        : m_root(root)
        , m_above(above) {}

    static QList<QSize> sizes() {
        return {{1920, 1080}, {1280, 800}, {1280, 720}, {1024, 768}, {960, 540}, {800, 600}};
    }

    void look(const std::string& page) {
        for (const QSize& size : sizes()) {
            resize(size);
            ++m_looks;
            if (m_root.size() != size - QSize(0, m_above))
                note(page, "the window cannot be made so small", size);
            for (const QString& fault : layoutFaultsIn(m_root))
                if (!isAPressAway(fault) && (size.width() >= usual || !isBearable(fault)))
                    note(page, fault, size);
            if (size == QSize(1280, 800)) noteHeight(page, size);
            keepPicture(page, size);
        }
    }
    void resize(const QSize& size) {
        m_root.resize(size - QSize(0, m_above));
        settleLayouts();
    }
    /// Layouts ask for another one until all have what they need.
    static void settleLayouts() {
        for (int round = 0; round < 4; ++round) {
            QCoreApplication::sendPostedEvents(nullptr, QEvent::LayoutRequest);
            QCoreApplication::processEvents();
        }
    }

    int looks() const { return m_looks; }
    /// Each fault with its page and the sizes at which it was seen, a line each; empty: none.
    std::string faults() const {
        std::string all;
        for (const auto& [fault, sizes] : m_faults)
            all += fault + " [" + sizes.join(' ').toStdString() + "]\n";
        return all;
    }

private:
    static constexpr int usual = 1000;
    static constexpr int aRow = 80; ///< of buttons; in the longer language a page may have one more

    /// A boat's strip has the begin of one reason, and a button beside it for all of them.
    static bool isAPressAway(const QString& fault) {
        return fault.contains("app::BoatStrip") && fault.contains(" is shortened");
    }
    /// In a window smaller than the pages are made for, a hint, a choice or a cell may end in dots: a press
    /// on it shows the rest. A desk's page may be scrolled sideways.
    bool isBearable(const QString& fault) const {
        if (fault.contains("gearOffice must be scrolled sideways")) return true;
        return fault.contains(" is shortened") && !fault.contains("Label") && !fault.contains("Button");
    }
    /// By hand, in the folder THOLEPIN_SHOTS.
    void keepPicture(const std::string& page, const QSize& size) {
        const QString folder = qEnvironmentVariable("THOLEPIN_SHOTS");
        if (folder.isEmpty()) return;
        const QString name = QString::fromStdString(page).replace(QRegularExpression("[^\\w]+"), "-");
        m_root.grab().save(
            QStringLiteral("%1/%2-%3x%4.png").arg(folder, name).arg(size.width()).arg(size.height()));
    }
    /// The pages are made to fit a window of 1280 × 800; their lists scroll by themselves.
    void noteHeight(const std::string& page, const QSize& size) {
        for (const auto* place : m_root.findChildren<app::PageScroll*>())
            if (place->isVisible() && qobject_cast<QStackedWidget*>(place->parentWidget()))
                if (const int more = place->verticalScrollBar()->maximum(); more > aRow)
                    note(page, QStringLiteral("is %1 too high").arg(more), size);
    }
    void note(const std::string& page, const QString& fault, const QSize& size) {
        m_faults[page + ": " + fault.toStdString()]
            << QStringLiteral("%1x%2").arg(size.width()).arg(size.height());
    }

    QWidget& m_root;
    int m_above;
    int m_looks = 0;
    std::map<std::string, QStringList> m_faults;
};

} // namespace support
