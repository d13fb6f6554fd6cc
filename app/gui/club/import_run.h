#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QObject>
#include <QString>

#include "core/base/calendar_day.h"

namespace core {
struct ImportPlan;
}

namespace app {

class ClubThread;

/// The first rows that were rejected, one a line, and how many more there are.
QString rejectedInWords(const core::ImportPlan& plan);
/// The first rows that were imported and may not be meant so, likewise.
QString warnedInWords(const core::ImportPlan& plan);

/// A folder of CSV files on its way into the club file. GUI thread; one at a time.
class ImportRun : public QObject {
    Q_OBJECT

public:
    explicit ImportRun(ClubThread& club, QObject* parent = nullptr);

    void start(const QString& folder, core::CalendarDay today);

signals:
    void progressed(int percent);
    void
    finished(const QString& sentence); ///< what was imported, and may not be meant so, or the rows to mend
    void pinNeeded(const QString& folder); ///< nothing was imported: it is a gear officer's to do

private:
    ClubThread& m_club;
};

} // namespace app
