#include "app/gui/gear/setup/set_up_notes.h"

#include "app/gui/widgets/drafts.h"

#include <QSettings>

namespace app {
namespace {

constexpr const char* printed = "tags-printed";
constexpr const char* away = "put-away";
constexpr const char* done = "done";

} // namespace

SetUpNotes::SetUpNotes(const std::filesystem::path& clubFile)
    : m_place(settingsOf(QStringLiteral("setup"), QString::fromStdString(clubFile.string())) +
              QLatin1Char('/')) {}

bool SetUpNotes::arePrinted() const {
    return is(printed);
}

void SetUpNotes::notePrinted() {
    set(printed, true);
}

bool SetUpNotes::isPutAway() const {
    return is(away);
}

void SetUpNotes::putAway(bool isAway) {
    set(away, isAway);
    if (!isAway) set(done, false);
}

bool SetUpNotes::isWanted() const {
    return !is(away) && !is(done);
}

void SetUpNotes::noteDone() {
    set(done, true);
}

bool SetUpNotes::is(const char* what) const {
    return QSettings().value(m_place + QLatin1String(what), false).toBool();
}

void SetUpNotes::set(const char* what, bool is) const {
    if (is)
        QSettings().setValue(m_place + QLatin1String(what), true);
    else
        QSettings().remove(m_place + QLatin1String(what));
}

} // namespace app
