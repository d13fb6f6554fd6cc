#include "core/base/result.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/club_sheet/heading_words.h"
#include "core/store/told_words.h"

namespace core {
namespace {

constexpr std::size_t longestWord =
    200; ///< in bytes; what is longer is a text, which hardly stands there again

/// Column and word, the word as words are compared.
std::pair<std::string, std::string> comparedWord(const std::pair<std::string, std::string>& word) {
    return {word.first, plainWord(word.second)};
}

/// With what the club was told before, where it is not said anew.
ClubSheetChoices withTold(ClubSheetChoices choices, const WordMeanings& told) {
    WordMeanings said;
    for (const auto& [word, means] : choices.words)
        said[comparedWord(word)] = means;
    for (const auto& [word, means] : told)
        if (!said.contains(comparedWord(word))) choices.words.emplace(word, means);
    return choices;
}

void tell(Ledger& ledger, const ClubSheetChoices& choices, const WordMeanings& told) {
    WordMeanings known;
    for (const auto& [word, means] : told)
        known[comparedWord(word)] = means;
    for (const auto& [word, means] : choices.words) {
        const auto before = known.find(comparedWord(word));
        const bool isNew = before == known.end() || before->second != means;
        if (isNew && word.second.size() <= longestWord)
            ledger.append(WordTold{std::string(sheet(choices.sheet).name()), word.first, word.second, means},
                          {});
    }
}

} // namespace

WordMeanings ClubRegister::toldWords(SheetId sheet) const {
    WordMeanings told;
    std::map<std::pair<std::string, std::string>, std::string> spelled;
    for (WordTold& each : toldWords::of(*m_state->database, core::sheet(sheet).name())) {
        const std::pair word{each.column, each.word};
        if (const auto before = spelled.find(comparedWord(word)); before != spelled.end())
            told.erase({each.column, before->second});
        spelled[comparedWord(word)] = each.word;
        told[word] = std::move(each.means);
    }
    return told;
}

Result<ClubSheetPlan> ClubRegister::importClubSheet(const Workbook& workbook, const ClubSheetChoices& choices,
                                                    CalendarDay today, bool dryRun,
                                                    const std::function<void(int, int)>& progress) {
    const auto plan = [&](const WordMeanings& told) {
        return planClubSheet(workbook, withTold(choices, told), m_state->registerStore, today,
                             mintingFor(*m_state->database), progress);
    };
    if (dryRun) return guarded([&] { return plan(toldWords(choices.sheet)); });
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<ClubSheetPlan> {
        const WordMeanings told = toldWords(choices.sheet);
        auto read = plan(told);
        if (!read || !read->plan.rejected.empty()) return read;
        appendRows(*m_state->database, ledger, read->plan.changes, {}, {});
        tell(ledger, choices, told);
        m_state->endUrgentOfWhole(ledger, today);
        return read;
    });
}

Result<TableLayout> ClubRegister::layoutOf(const Workbook& workbook, const ClubSheetChoices& choices) const {
    return guarded([&] { return core::layoutOf(workbook, choices, m_state->registerStore); });
}

Result<TableLayout> ClubRegister::layoutToChooseFrom(const Workbook& workbook,
                                                     const ClubSheetChoices& choices) const {
    return guarded([&] { return core::layoutToChooseFrom(workbook, choices, m_state->registerStore); });
}

} // namespace core
