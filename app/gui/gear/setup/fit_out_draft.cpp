#include "app/gui/gear/setup/fit_out_draft.h"

#include "app/gui/gear/register/written_cell.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct FitOutText {
    Q_DECLARE_TR_FUNCTIONS(FitOut)
};

const QString allKey = QStringLiteral("all");

struct DayCell {
    FitOutDraft::Field field;
    const char* column; ///< of the sheet of items
};
constexpr DayCell dayCells[] = {{&core::NewKit::made, "made"},
                                {&core::NewKit::firstUse, "first_use"},
                                {&core::NewKit::stamped, "stamped"}};

std::string dayInSheet(const core::NewKit& kit, const DayCell& day) {
    return asInSheet(core::SheetId::Items, day.column, text(kit.*day.field));
}

/// "14 March 2026" as it was understood; else as it was written.
QString dayInWords(const core::NewKit& kit, const DayCell& day) {
    const auto understood = core::PartialDay::parse(dayInSheet(kit, day));
    return understood ? inWords(*understood) : text(kit.*day.field);
}

QString keyOf(int line, int thing = -1) {
    return thing < 0 ? QStringLiteral("line %1").arg(line)
                     : QStringLiteral("line %1 %2").arg(line).arg(thing);
}

} // namespace

FitOutDraft::FitOutDraft(std::vector<core::FitOutLine> lines, std::vector<core::KitType> kitTypes,
                         std::string boat, std::string place)
    : m_lines(std::move(lines))
    , m_things(m_lines.size())
    , m_counts(m_lines.size())
    , m_boat(std::move(boat))
    , m_place(std::move(place)) {
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const auto type = std::find_if(kitTypes.begin(), kitTypes.end(), [&](const core::KitType& each) {
            return each.name == m_lines[i].line.kitType;
        });
        m_kitTypes.push_back(type == kitTypes.end() ? core::KitType{m_lines[i].line.kitType} : *type);
        setCount(keyOf(static_cast<int>(i)), m_lines[i].lacking());
    }
}

bool FitOutDraft::isOf(const std::vector<core::FitOutLine>& lines, const std::string& boat,
                       const std::string& place) const {
    return m_boat == boat && m_place == place &&
           std::equal(lines.begin(), lines.end(), m_lines.begin(), m_lines.end(),
                      [](const auto& a, const auto& b) { return a.line == b.line && a.there == b.there; });
}

FitOutDraft::Place FitOutDraft::placeOf(const QString& key) {
    const QStringList parts = key.split(' ');
    if (parts.size() < 2) return {};
    return {parts[1].toInt(), parts.size() > 2 ? parts[2].toInt() : -1};
}

template <class Self, class Do>
void FitOutDraft::each(Self& self, const QString& key, Do act) {
    const Place at = placeOf(key);
    for (int line = 0; line < static_cast<int>(self.m_things.size()); ++line) {
        if (at.line >= 0 && at.line != line) continue;
        auto& things = self.m_things[static_cast<std::size_t>(line)];
        for (int i = 0; i < self.m_counts[static_cast<std::size_t>(line)]; ++i)
            if (at.thing < 0 || at.thing == i) act(things[static_cast<std::size_t>(i)]);
    }
}

/// A number that is made smaller keeps what was written, in case it is made larger again.
void FitOutDraft::setCount(const QString& key, int count) {
    if (!hasNumber(key) || placeOf(key).line >= static_cast<int>(m_lines.size())) return;
    const auto line = static_cast<std::size_t>(placeOf(key).line);
    Thing fresh;
    // One more is like the last one, but for what is its own.
    if (!m_things[line].empty()) fresh.kit = m_things[line].back().kit;
    fresh.kit.kitType = m_lines[line].line.kitType;
    fresh.kit.boat = m_boat;
    fresh.kit.place = m_place;
    fresh.kit.person.clear();
    m_counts[line] = count;
    m_things[line].resize(std::max(m_things[line].size(), static_cast<std::size_t>(count)), fresh);
}

int FitOutDraft::countOf(const QString& key) const {
    int count = 0;
    each(*this, key, [&](const Thing&) { ++count; });
    return count;
}

int FitOutDraft::count() const {
    return countOf(allKey);
}

bool FitOutDraft::isLine(const QString& key) const {
    return placeOf(key).line >= 0;
}

bool FitOutDraft::hasNumber(const QString& key) const {
    const Place at = placeOf(key);
    return at.line >= 0 && at.thing < 0;
}

const core::KitType* FitOutDraft::kitTypeOf(const QString& key) const {
    const int line = placeOf(key).line;
    return line < 0 || line >= static_cast<int>(m_kitTypes.size())
               ? nullptr
               : &m_kitTypes[static_cast<std::size_t>(line)];
}

QString FitOutDraft::titleOf(const QString& key) const {
    const Place at = placeOf(key);
    if (at.line < 0) return FitOutText::tr("All that is new");
    const QString kitType = text(m_lines[static_cast<std::size_t>(at.line)].line.kitType);
    return at.thing < 0 ? kitType : FitOutText::tr("%1 no. %2, new").arg(kitType).arg(at.thing + 1);
}

void FitOutDraft::write(const QString& key, Field field, const std::string& text) {
    each(*this, key, [&](Thing& thing) { thing.kit.*field = text; });
}

void FitOutDraft::writeSerial(const QString& key, const std::string& text) {
    if (countOf(key) == 1) each(*this, key, [&](Thing& thing) { thing.serial = text; });
}

std::string FitOutDraft::read(const QString& key, Field field) const {
    if (differs(key, field)) return {};
    std::string found;
    each(*this, key, [&](const Thing& thing) { found = thing.kit.*field; });
    return found;
}

bool FitOutDraft::differs(const QString& key, Field field) const {
    const std::string* first = nullptr;
    bool isDifferent = false;
    each(*this, key, [&](const Thing& thing) {
        isDifferent = isDifferent || (first && *first != thing.kit.*field);
        if (!first) first = &(thing.kit.*field);
    });
    return isDifferent;
}

std::string FitOutDraft::serialOf(const QString& key) const {
    std::string serial;
    if (countOf(key) == 1) each(*this, key, [&](const Thing& thing) { serial = thing.serial; });
    return serial;
}

std::vector<core::NewKit> FitOutDraft::kit() const {
    std::vector<core::NewKit> kit;
    each(*this, allKey, [&](const Thing& thing) {
        kit.push_back(thing.kit);
        for (const DayCell& day : dayCells)
            kit.back().*day.field = dayInSheet(thing.kit, day);
        if (!thing.serial.empty()) kit.back().serials = {thing.serial};
    });
    return kit;
}

QString FitOutDraft::aboutThing(const Thing& thing, int line) const {
    const core::KitType& type = m_kitTypes[static_cast<std::size_t>(line)];
    QStringList about;
    if (!thing.kit.size.empty())
        about << FitOutText::tr("size %1").arg(text(thing.kit.size));
    else if (!type.sizes.empty())
        about << FitOutText::tr("no size yet");
    const auto day = [&](std::size_t which) { return dayInWords(thing.kit, dayCells[which]); };
    if (!thing.kit.made.empty()) about << FitOutText::tr("made %1").arg(day(0));
    if (!thing.kit.firstUse.empty()) about << FitOutText::tr("first used %1").arg(day(1));
    if (!thing.kit.stamped.empty()) about << FitOutText::tr("stamped %1").arg(day(2));
    if (!thing.serial.empty()) about << FitOutText::tr("serial %1").arg(text(thing.serial));
    if (!thing.kit.person.empty())
        about << FitOutText::tr("belongs to %1").arg(text(thing.kit.person));
    else if (type.personal)
        about << FitOutText::tr("nobody's yet");
    return about.join(FitOutText::tr(", "));
}

ListRow FitOutDraft::rowOfLine(int line) const {
    const auto at = static_cast<std::size_t>(line);
    const core::FitOutLine& wanted = m_lines[at];
    const int count = countOf(keyOf(line));
    const bool isFilled = wanted.lacking() == 0; // what is new is not there before it is registered
    QStringList remark;
    if (count > 0) remark << FitOutText::tr("%1 new").arg(count);
    if (count == 1) remark << aboutThing(m_things[at].front(), line);
    remark.removeAll(QString());
    ListRow row = plainRow(keyOf(line), isFilled ? Mark::Found : Mark::StillToFind,
                           isFilled ? FitOutText::tr("filled") : FitOutText::tr("not filled"),
                           text(wanted.line.kitType), remark.join(FitOutText::tr(", ")));
    row.aside = FitOutText::tr("%1 of %2 there").arg(wanted.there).arg(wanted.line.quantity);
    row.isPressable = true;
    return row;
}

ListRow FitOutDraft::rowOfThing(int line, int thing) const {
    const Thing& each = m_things[static_cast<std::size_t>(line)][static_cast<std::size_t>(thing)];
    ListRow row = plainRow(keyOf(line, thing), Mark::NotAsked, FitOutText::tr("new"),
                           titleOf(keyOf(line, thing)), aboutThing(each, line));
    row.isPressable = true;
    return row;
}

std::vector<ListRow> FitOutDraft::rows() const {
    std::vector<ListRow> rows;
    if (m_lines.empty()) return rows;
    ListRow all = plainRow(allKey, Mark::NotAsked, FitOutText::tr("all"), titleOf(allKey),
                           FitOutText::tr("What is written here is written for each of them."));
    all.aside = QString::number(count());
    all.isPressable = true;
    rows.push_back(all);
    for (int line = 0; line < static_cast<int>(m_lines.size()); ++line) {
        rows.push_back(rowOfLine(line));
        const int things = countOf(keyOf(line));
        for (int i = 0; things > 1 && i < things; ++i)
            rows.push_back(rowOfThing(line, i));
    }
    return rows;
}

} // namespace app
