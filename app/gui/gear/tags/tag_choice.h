#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/club/club_kit.h"

#include <QSet>
#include <QString>
#include <QStringList>

#include <vector>

namespace app {

/// Which of a club's tags are to be printed: those of a home and a kit type, less what was left out by hand.
class TagChoice {
public:
    /// Those that wear out come first, the weakest before all others.
    void setTags(std::vector<core::TagLabel> tags);
    void setHome(const QString& home) { m_home = home; }       ///< boat, place or person; empty: all
    void setKitType(const QString& name) { m_kitType = name; } ///< empty: all
    void setWithControl(bool with) { m_withControl = with; }
    void toggle(const QString& code); ///< leaves it out, or takes it in again
    void leaveOut(bool all);          ///< all that are shown, or none of them
    void takeWorn();                  ///< those that wear out, of all that are shown, and no others

    QStringList homes() const;
    QStringList kitTypes() const; ///< of kit; the others are "boats", "people" and "places"
    int wornCount() const;        ///< of those that are shown: how many wear out
    std::vector<ListRow> lines() const;
    std::vector<core::TagLabel> chosen() const; ///< in the list's order, control tags last

private:
    bool isShown(const core::TagLabel& tag) const;

    std::vector<core::TagLabel> m_tags;
    QString m_home;
    QString m_kitType;
    bool m_withControl = false;
    QSet<QString> m_leftOut;
};

} // namespace app
