#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/result.h"
#include "core/club/club_register.h"
#include "core/club/club_state.h"
#include "core/exchange/club_sheet/cell_words.h"
#include "core/exchange/club_sheet/heading_words.h"
#include "core/store/names_now.h"
#include "core/store/told_words.h"
#include "core/upkeep/same_name.h"

#include <algorithm>
#include <fmt/ranges.h>
#include <tuple>

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

bool isMeant(const ToldWordWanted& wanted, const ToldWord& told) {
    return plainWord(wanted.word) == plainWord(told.word) &&
           (wanted.column.empty() || wanted.column == told.column) &&
           (!wanted.sheet || wanted.sheet == told.sheet);
}

/// Of all sheets, by sheet, column and word. What one of a size means is as it was told: the row that it
/// stands in says of what kit type it is.
std::vector<ToldWord> wordsAsTold(const ClubState& state) {
    // By sheet, column and the word as words are compared: the newest of it, whatever its spelling.
    std::map<std::tuple<SheetId, std::string, std::string>, ToldWord> newest;
    for (toldWords::Told& told : toldWords::all(*state.database)) {
        const Sheet* sheet = sheetOfName(told.word.sheet);
        if (sheet == nullptr) continue; // of a later program
        const std::tuple word{sheet->id, told.word.column, plainWord(told.word.word)};
        if (told.isForgotten)
            newest.erase(word);
        else
            newest[word] = {sheet->id, told.word.column, std::move(told.word.word),
                            std::move(told.word.means)};
    }
    std::vector<ToldWord> words;
    for (auto& each : newest)
        words.push_back(std::move(each.second));
    return words;
}

/// What the size that the word means is called by now at the kit types that have it: each name once. None of
/// what is no size.
std::vector<std::string> sizeNow(const ClubState& state, const ToldWord& told) {
    const Sheet& sheet = core::sheet(told.sheet);
    const int column = sheet.indexOf(told.column);
    if (column < 0 || namedIn(sheet, column) != Named::Size) return {};
    std::vector<std::string> names;
    for (const Cells& kitType : state.registerStore.all(SheetId::KitTypes)) {
        const std::string now = namesNow::of(*state.database, Named::Size, told.means, kitType.front());
        const auto row = state.registerStore.find(SheetId::Sizes,
                                                  keyOf(core::sheet(SheetId::Sizes), {kitType.front(), now}));
        if (row && std::none_of(names.begin(), names.end(),
                                [&](const std::string& known) { return sameName(known, row->at(1)); }))
            names.push_back(row->at(1));
    }
    return names;
}

} // namespace

std::vector<ToldWord> ClubRegister::toldWords() const {
    std::vector<ToldWord> words = wordsAsTold(*m_state);
    for (ToldWord& each : words)
        if (const auto now = sizeNow(*m_state, each); !now.empty())
            each.means = fmt::format("{}", fmt::join(now, ", "));
    return words;
}

WordMeanings ClubRegister::toldWords(SheetId sheet) const {
    WordMeanings told;
    for (ToldWord& each : wordsAsTold(*m_state)) {
        if (each.sheet != sheet) continue;
        if (const auto now = sizeNow(*m_state, each); now.size() == 1) each.means = now.front();
        told[{std::move(each.column), std::move(each.word)}] = std::move(each.means);
    }
    return told;
}

Result<std::vector<ToldWord>> ClubRegister::forgetWords(const std::vector<ToldWordWanted>& wanted,
                                                        const std::string& by) {
    return m_state->write(Right::GearOfficer, [&](Ledger& ledger) -> Result<std::vector<ToldWord>> {
        const std::vector<ToldWord> told = toldWords();
        for (const ToldWordWanted& each : wanted)
            if (std::none_of(told.begin(), told.end(),
                             [&](const ToldWord& word) { return isMeant(each, word); }))
                return Error{ErrorCode::WordNotTold, {shown(each.word)}};
        std::vector<ToldWord> forgotten;
        for (const ToldWord& word : told) {
            if (std::none_of(wanted.begin(), wanted.end(),
                             [&](const ToldWordWanted& each) { return isMeant(each, word); }))
                continue;
            ledger.append(WordForgotten{std::string(core::sheet(word.sheet).name()), word.column, word.word},
                          by);
            forgotten.push_back(word);
        }
        return forgotten;
    });
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
