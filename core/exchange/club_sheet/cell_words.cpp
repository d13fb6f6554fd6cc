#include "core/exchange/club_sheet/cell_words.h"

#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/plain_text.h"
#include "core/exchange/club_sheet/heading_words.h"
#include "core/exchange/club_sheet/written_day.h"
#include "core/exchange/csv_cell.h"
#include "core/register/typed_rows.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <unordered_set>

namespace core {
namespace {

struct ValueWords {
    std::string_view column;
    std::string_view ours;
    std::string_view words; ///< separated by |
};

/// Common practice of clubs' lists, no source.
constexpr ValueWords valueWords[] = {
    {"state", "serviceable",
     "ok|okay|good|fine|in order|in service|ready|usable|serviceable|working|pass|passed|yes|y|x|gut|in "
     "ordnung|io|i o|"
     "einsatzbereit|einsatzfähig|tauglich|bereit|ja|j|intakt|neu|new|\u2713|\u2714"},
    {"state", "unserviceable",
     "us|u s|broken|defect|defective|damaged|faulty|repair|in repair|under repair|out of order|out of "
     "service|not ok|"
     "no|n|bad|fail|failed|quarantine|quarantined|unusable|defekt|kaputt|beschädigt|schadhaft|in "
     "reparatur|reparatur|"
     "nicht einsatzbereit|nicht einsatzfähig|untauglich|gesperrt|außer betrieb|außer dienst|nein|nio|n i o"},
    {"state", "missing", "lost|gone|not found|fehlt|vermisst|verloren|nicht gefunden|fehlend|weg"},
    {"state", "written off",
     "written off|scrapped|scrap|disposed|disposed of|retired|condemned|withdrawn for "
     "good|ausgemustert|ausgesondert|"
     "entsorgt|abgeschrieben|verschrottet"},
    {"why", "lost", "loss|verloren|verlust"},
    {"why", "damaged", "damage|broken|defect|beschädigt|schaden|defekt|kaputt"},
    {"why", "worn", "worn out|wear|abgenutzt|verschlissen|verschleiß"},
    {"why", "expired", "out of date|date|age|abgelaufen|ablauf|alter"},
    {"why", "mistake",
     "by mistake|registered by mistake|in error|duplicate|irrtum|irrtümlich|doppelt|versehen|aus versehen"},
    {"role", "driver",
     "helm|helmsman|helmswoman|cox|coxswain|skipper|pilot|boat driver|boat "
     "handler|bootsführer|bootsführerin|steuermann|"
     "steuerfrau|rudergänger|fahrer|fahrerin|schiffsführer|schiffsführerin|vormann"},
    {"role", "crew",
     "crewman|crew "
     "member|member|deckhand|hand|swimmer|besatzung|mannschaft|crewmitglied|bootsgast|mitglied|retter|"
     "rettungsschwimmer|helfer|matrose"},
    {"role", "gear officer",
     "kit officer|equipment officer|quartermaster|storekeeper|gear "
     "steward|gerätewart|gerätewartin|zeugwart|zeugwartin|"
     "materialwart|materialwartin|bootswart"},
    {"severity", "stop", "critical|serious|no go|high|kritisch|schwer|hoch|sperre|gesperrt"},
    {"severity", "remark", "minor|low|note|gering|leicht|niedrig|hinweis|bemerkung"},
    {"phase", "launch", "before|before launch|departure|out|vorher|vor der fahrt|auslaufen|ausfahrt|start"},
    {"phase", "return", "after|after return|arrival|in|nachher|nach der fahrt|einlaufen|rückkehr"},
    {"kind", "look", "check|visual|tick|sicht|sichtprüfung|schauen|prüfen"},
    {"kind", "measure", "reading|value|messen|messwert|wert|messung"},
    {"kind", "timed", "time|run|zeit|laufzeit"},
    {"kind", "inspect_every", "inspection|inspect|prüfung|prüfen|kontrolle"},
    {"kind", "service_every", "service|servicing|maintenance|wartung|warten"},
    {"kind", "stamped", "expiry|expiry date|use by|ablaufdatum|verfallsdatum|aufdruck"},
};
constexpr std::string_view yesWords =
    "yes|y|true|x|1|ok|pass|passed|ja|j|wahr|bestanden|i o|io|in ordnung|\u2713|\u2714|\u2611";
constexpr std::string_view noWords =
    "no|n|false|0|fail|failed|nein|falsch|nicht bestanden|\u2717|\u2718|\u2610";
constexpr std::string_view bareYesNo = "yes|y|no|n|ja|j|nein|x|true|false|wahr|falsch|1|0";
constexpr std::string_view nothingWords = "n a|na|k a|keine angabe|none|keine|unknown|unbekannt|tbc|tba";

using WordSet = std::unordered_set<std::string>;

WordSet setOf(std::string_view list) {
    WordSet words;
    for (std::string_view word : wordsOf(list))
        words.insert(plainWord(word));
    return words;
}

/// Is the word among those of a list that is always the same.
template <const std::string_view& list>
bool isAmong(const std::string& word) {
    static const WordSet words = setOf(list);
    return words.contains(word);
}

/// Our word by the column and a word of others.
const std::map<std::pair<std::string_view, std::string>, std::vector<std::string_view>>& ourWords() {
    static const auto known = [] {
        std::map<std::pair<std::string_view, std::string>, std::vector<std::string_view>> words;
        for (const ValueWords& each : valueWords)
            for (std::string_view word : wordsOf(each.words))
                words[{each.column, plainWord(word)}].push_back(each.ours);
        return words;
    }();
    return known;
}

bool saysNothing(std::string_view text) {
    const bool isDash =
        text == "-" || text == "--" || text == "\u2013" || text == "\u2014" || text == "?" || text == "/";
    return text.empty() || isDash;
}

std::string choiceOf(const Column& column, const std::string& text) {
    const std::string folded = foldName(text);
    if (column.offers(folded)) return text;
    const std::string word = plainWord(text);
    for (const std::string_view choice : column.choices)
        if (plainWord(choice) == word) return std::string(choice);
    const auto found = ourWords().find({column.name, word});
    if (found != ourWords().end())
        for (std::string_view ours : found->second)
            if (column.offers(ours)) return std::string(ours);
    return text;
}

std::string yesNoOf(const std::string& text) {
    const std::string word = plainWord(text);
    if (isAmong<yesWords>(word)) return "yes";
    return isAmong<noWords>(word) ? "no" : text;
}

/// Words behind a number that say what the column holds anyway. Of another unit the number would be another.
bool isUnitOf(const Column& column, std::string_view word) {
    static const std::map<std::string_view, std::set<std::string_view>> units{
        {"mass_kg", {"kg"}},
        {"mass_low_kg", {"kg"}},
        {"mass_high_kg", {"kg"}},
        {"chest_cm", {"cm"}},
        {"chest_low_cm", {"cm"}},
        {"chest_high_cm", {"cm"}},
        {"price", {"eur", "euro", "gbp", "€", "£", "$"}},
        {"order_lead_days", {"d", "day", "days", "tag", "tage"}},
        {"lead_days", {"d", "day", "days", "tag", "tage"}},
        {"check_every_days", {"d", "day", "days", "tag", "tage"}},
        {"hours", {"h", "hour", "hours", "std", "stunde", "stunden"}},
    };
    if (const auto known = units.find(column.name); known != units.end()) return known->second.contains(word);
    static const std::set<std::string_view> pieces{"x", "pc", "pcs", "stück", "stk"};
    return column.type == CellType::Count && pieces.contains(word);
}

/// `75,5 kg` is 75.5. A comma before three digits may stand for thousands, so it stays and is refused.
std::string numberOf(const std::string& text, const Column& column) {
    std::string number = text;
    for (const std::string_view mark : {"€", "£", "$"})
        if (number.starts_with(mark)) number = std::string(withoutOuterBlanks(number.substr(mark.size())));
    const auto end = number.find_last_of("0123456789");
    if (end == std::string::npos) return text;
    const std::string unit = foldName(number.substr(end + 1));
    if (!unit.empty() && !isUnitOf(column, unit.ends_with('.') ? unit.substr(0, unit.size() - 1) : unit))
        return text;
    number.resize(end + 1);
    const auto comma = number.find(',');
    const bool isDecimal = comma != std::string::npos && comma == number.rfind(',') &&
                           number.find('.') == std::string::npos && number.size() - comma - 1 != 3;
    if (isDecimal) number[comma] = '.';
    return number;
}

CellMeaning dayOf(const SheetCell& cell, const std::string& text, std::optional<DayOrder> days) {
    if (cell.kind == SheetCell::Kind::Day) return {text};
    if (cell.kind == SheetCell::Kind::Number)
        if (const auto month = monthOfNumber(text)) return {*month};
    const WrittenDay day = dayAsWritten(text, days);
    if (day.isAmbiguous) return {text, ErrorCode::DayAmbiguous};
    return {day.text.empty() ? text : day.text};
}

/// A list by whatever marks people put between names.
std::string listOf(std::string text) {
    std::replace(text.begin(), text.end(), ',', ';');
    return text;
}

} // namespace

std::string oneLine(std::string_view text) {
    constexpr std::string_view noBreakBlank = "\u00A0";
    std::string line = onOneLine(text);
    for (std::size_t at; (at = line.find(noBreakBlank)) != std::string::npos;)
        line.replace(at, noBreakBlank.size(), " ");
    return std::string(withoutOuterBlanks(line));
}

bool isChoiceWord(const Column& column, std::string_view word) {
    return !isAmong<bareYesNo>(plainWord(word)) &&
           column.offers(foldName(choiceOf(column, std::string(word))));
}

CellMeaning meaningOf(const SheetCell& cell, const Column& column, std::optional<DayOrder> days) {
    if (cell.kind == SheetCell::Kind::Fault) return {cell.text, ErrorCode::CellOfFault};
    if (cell.kind == SheetCell::Kind::Unsaved) return {{}, ErrorCode::CellUnsaved};
    const std::string text = oneLine(cell.text);
    if (saysNothing(text)) return {};
    if (isProse(column)) return {cell.text};
    if (column.type != CellType::Text && column.type != CellType::Name &&
        isAmong<nothingWords>(plainWord(text)))
        return {};
    switch (column.type) {
    case CellType::Day:
    case CellType::ExactDay:
        return dayOf(cell, text, days);
    case CellType::YesNo:
        return {yesNoOf(text)};
    case CellType::Choice:
        return {choiceOf(column, text)};
    case CellType::Count:
    case CellType::Number:
    case CellType::Amount:
        return {numberOf(text, column)};
    case CellType::Names:
        return {listOf(text)};
    default:
        return {text};
    }
}

} // namespace core
