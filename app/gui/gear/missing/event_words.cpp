#include "app/gui/gear/missing/event_words.h"

#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>
#include <QStringList>

namespace app {
namespace {

struct EventWordsText {
    Q_DECLARE_TR_FUNCTIONS(EventTally)
};

QString atInWords(const std::optional<core::Instant>& at, core::CalendarDay today) {
    return at ? inWords(*at, today) : EventWordsText::tr("at a time nobody wrote down");
}

QString byInWords(const std::vector<std::string>& by) {
    return by.empty() ? QString() : EventWordsText::tr(" by %1").arg(listed(by));
}

class Lines {
public:
    Lines(const core::EventTally& tally, const std::map<std::string, std::string>& kitTypes,
          core::CalendarDay today)
        : m_tally(tally)
        , m_kitTypes(kitTypes)
        , m_today(today) {}

    std::vector<ListRow> all() && {
        for (const core::BoatTally& boat : m_tally.boats)
            addBoat(boat);
        addSwaps();
        addMissing();
        return std::move(m_rows);
    }

private:
    void addBoat(const core::BoatTally& boat) {
        const QString name = text(boat.boat);
        const int out = static_cast<int>(boat.out.size());
        const int back = static_cast<int>(boat.back.size());
        m_rows.push_back(
            headingRow("boat " + name, name, EventWordsText::tr("%1 of %2 back").arg(back).arg(out)));
        m_rows.push_back(plainRow("out " + name, Mark::NotAsked, {},
                                  EventWordsText::tr("Went out %1%2")
                                      .arg(atInWords(boat.launchedAt, m_today), byInWords(boat.launchedBy))));
        if (boat.returnedAt)
            m_rows.push_back(
                plainRow("back " + name, back == out ? Mark::Found : Mark::NotAsked, {},
                         EventWordsText::tr("Came back %1, signed by %2")
                             .arg(atInWords(boat.returnedAt, m_today), text(boat.returnSignedBy))));
        else
            m_rows.push_back(plainRow("back " + name, Mark::StillToFind, EventWordsText::tr("out"),
                                      EventWordsText::tr("Is still out, or its return check is not signed")));
        for (const core::ItemName& item : boat.notReturned)
            m_rows.push_back(
                plainRow("lost " + text(item.id), boat.returnedAt ? Mark::Look : Mark::StillToFind,
                         EventWordsText::tr("not seen since"), kitTypeOf(item.id),
                         EventWordsText::tr("no check has seen it since it went out on %1").arg(name), item));
    }

    void addSwaps() {
        if (m_tally.swaps.empty()) return;
        m_rows.push_back(headingRow("swaps", EventWordsText::tr("came back on another boat"),
                                    QString::number(m_tally.swaps.size())));
        for (const core::Swap& swap : m_tally.swaps)
            m_rows.push_back(plainRow("swap " + text(swap.item.id), Mark::Look,
                                      EventWordsText::tr("on another boat"), text(swap.kitType), undoOf(swap),
                                      swap.item));
    }

    QString undoOf(const core::Swap& swap) const {
        const QString out = text(swap.wentOutOn), back = text(swap.cameBackOn);
        if (swap.against.id.empty())
            return EventWordsText::tr("Went out on %1, came back on %2. Carry it back to %1.").arg(out, back);
        return EventWordsText::tr(
                   "Went out on %1, came back on %2; %3 went the other way. Change the two over: this "
                   "one to %1, %3 to %2.")
            .arg(out, back, codeInWords(swap.against.tag));
    }

    void addMissing() {
        m_rows.push_back(headingRow("missing", EventWordsText::tr("missing now"),
                                    QString::number(m_tally.missing.size())));
        for (const core::MissingItem& item : m_tally.missing)
            m_rows.push_back(plainRow("missing " + text(item.item.id), Mark::StillToFind,
                                      EventWordsText::tr("missing"), text(item.kitType),
                                      EventWordsText::tr("went out on %1").arg(text(item.boat)), item.item));
        if (m_tally.missing.empty())
            m_rows.push_back(plainRow("missing none", Mark::Found, {},
                                      EventWordsText::tr("Nothing that went out is missing")));
    }

    QString kitTypeOf(const std::string& id) const {
        const auto found = m_kitTypes.find(id);
        return found == m_kitTypes.end() ? EventWordsText::tr("kit") : text(found->second);
    }

    const core::EventTally& m_tally;
    const std::map<std::string, std::string>& m_kitTypes;
    core::CalendarDay m_today;
    std::vector<ListRow> m_rows;
};

} // namespace

QString summaryOf(const core::EventTally& tally) {
    int out = 0, back = 0;
    for (const core::BoatTally& boat : tally.boats) {
        out += static_cast<int>(boat.out.size());
        back += static_cast<int>(boat.back.size());
    }
    const auto boats = static_cast<int>(tally.boats.size());
    const auto missing = static_cast<int>(tally.missing.size());
    int swapped = 0;
    for (const core::Swap& swap : tally.swaps)
        swapped += swap.against.id.empty() ? 1 : 2;
    QStringList words{EventWordsText::tr("%1 went out on %2")
                          .arg(counted(out, QT_TRANSLATE_N_NOOP("Words", "%n item"),
                                       QT_TRANSLATE_N_NOOP("Words", "%n items")),
                               counted(boats, QT_TRANSLATE_N_NOOP("Words", "%n boat"),
                                       QT_TRANSLATE_N_NOOP("Words", "%n boats"))),
                      EventWordsText::tr("%1 came back on their own").arg(back)};
    if (swapped) words << EventWordsText::tr("%1 on another").arg(swapped);
    words << (missing ? EventWordsText::tr("%1 missing now").arg(missing)
                      : EventWordsText::tr("nothing missing now"));
    return words.join(EventWordsText::tr(", ")) + QLatin1Char('.');
}

std::vector<ListRow> linesOf(const core::EventTally& tally,
                             const std::map<std::string, std::string>& kitTypes, core::CalendarDay today) {
    return Lines(tally, kitTypes, today).all();
}

} // namespace app
