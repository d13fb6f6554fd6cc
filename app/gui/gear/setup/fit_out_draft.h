#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/fit_out.h"
#include "core/register/new_kit.h"

#include <string>
#include <vector>

namespace app {

/// What somebody is about to register for a boat or for the spares at a place: so many things of each line,
/// each with a size, days, a serial and an owner of its own. What is written for all, or for a line, is
/// written for each thing beneath it. A plain value.
class FitOutDraft {
public:
    struct Thing {
        core::NewKit kit; ///< one thing
        std::string serial;
    };
    using Field = std::string core::NewKit::*; ///< size, person, made, firstUse, stamped

    FitOutDraft() = default;
    /// Begins with what is lacking on each line. `boat` or `place`: the home of the things.
    FitOutDraft(std::vector<core::FitOutLine> lines, std::vector<core::KitType> kitTypes, std::string boat,
                std::string place);

    const std::vector<core::FitOutLine>& lines() const { return m_lines; }
    bool isOf(const std::vector<core::FitOutLine>& lines, const std::string& boat,
              const std::string& place) const;

    /// The rows of the list: all, then each line with its things.
    std::vector<ListRow> rows() const;
    int count() const;                                        ///< things in all
    int countOf(const QString& key) const;                    ///< things of the row of that key
    void setCount(const QString& key, int things);            ///< of a line
    bool isLine(const QString& key) const;                    ///< of one kit type, also one thing of it
    bool hasNumber(const QString& key) const;                 ///< a whole line
    const core::KitType* kitTypeOf(const QString& key) const; ///< null: of several
    QString titleOf(const QString& key) const;

    void write(const QString& key, Field field, const std::string& text);
    void writeSerial(const QString& key, const std::string& text); ///< of a row that is one thing
    /// What all things of the row have; empty also where they differ, which `differs` says.
    std::string read(const QString& key, Field field) const;
    bool differs(const QString& key, Field field) const;
    std::string serialOf(const QString& key) const;

    /// To be registered, one thing each; its days as the register's sheets spell them, in whatever of its
    /// forms they were written.
    std::vector<core::NewKit> kit() const;

private:
    struct Place {
        int line = -1;  ///< -1: all
        int thing = -1; ///< -1: all of the line
    };
    static Place placeOf(const QString& key);
    template <class Self, class Do>
    static void each(Self& self, const QString& key, Do act);
    ListRow rowOfLine(int line) const;
    ListRow rowOfThing(int line, int thing) const;
    QString aboutThing(const Thing& thing, int line) const;

    std::vector<core::FitOutLine> m_lines;
    std::vector<core::KitType> m_kitTypes;    ///< by line
    std::vector<std::vector<Thing>> m_things; ///< by line, those beyond its number too
    std::vector<int> m_counts;                ///< by line
    std::string m_boat;
    std::string m_place;
};

} // namespace app
