#pragma once

#include <QString>

#include "core/base/calendar_day.h"
#include "core/base/result.h"

namespace core {
struct ImportPlan;
}

namespace app {

/// A club file that somebody starts, and what it begins with.
struct NewClub {
    enum class Begins { Starter, Spreadsheet, Folder, Empty };

    QString name;
    QString file;
    Begins begins = Begins::Empty;
    QString starter; ///< its name, see starters.h
    QString folder;  ///< of CSV files
};

/// Makes the file; a register that is refused leaves none behind, and the plan says which rows. A spreadsheet
/// is imported later: the file begins empty. Does not touch the window; takes as long as the import does.
core::Result<core::ImportPlan> makeClub(const NewClub& wanted, core::CalendarDay today);

/// Where a club of that name goes if nobody says otherwise: into the documents folder, under its name.
QString suggestedFile(const QString& clubName);
/// The user's folder of documents, else, where there is none, the user's own.
QString documentsFolder();

} // namespace app
