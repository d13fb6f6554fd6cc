#include "core/exchange/club_sheet/heading_words.h"

#include "core/base/plain_text.h"
#include "core/exchange/club_sheet/club_sheet.h"

#include <algorithm>
#include <optional>
#include <unordered_map>

namespace core {
namespace {

struct Words {
    std::string_view meaning;
    std::string_view words;                      ///< separated by |, surest first
    std::optional<SheetId> sheet = std::nullopt; ///< only there; empty: wherever there is such a column
};

using enum SheetId;

/// Common practice of clubs' lists, no source.
constexpr Words headingWords[] = {
    {"code", "tag|tag code|kit tag|tag no|tag number|tag id|barcode|qr code|qr|marke|markencode|marken "
             "nr|kennung|anhänger"},
    {"tag", "tag code|barcode|qr code|marke|markencode"},
    {"kit_type",
     "what|kit|kit type|kit item|item description|item name|equipment name|type of kit|equipment|equipment "
     "type|item type|gear|article|item|type|thing|"
     "gegenstand|was|ausrüstung|ausrüstungsart|gerät|geräteart|material|artikel|bezeichnung|art|typ|"
     "description|beschreibung|benennung"},
    {"kit_type", "name", Items},
    {"kit_type", "name", KitTypes},
    {"size", "size|sizes|größe|grösse|konfektionsgröße"},
    {"home",
     "location|home|where|where kept|where stored|kept where|stowed|stowage|kept|kept at|stored|stored "
     "at|storage|position|boat or place|"
     "boat place|standort|ort|wo|lagerort|aufbewahrung|aufbewahrungsort|stauort|boot platz|boot ort",
     Items},
    {"boat",
     "boat|boat name|name of boat|vessel|craft|on boat|aboard|boot|bootsname|schiff|fahrzeug|an bord"},
    {"boat", "name", Boats},
    {"boat_class", "boat class|class|boat type|type|class of boat|bootsklasse|klasse|bootstyp|typ"},
    {"place", "place|store|shed|shelf|locker|room|station|platz|lager|regal|schrank|raum|lagerplatz"},
    {"place", "name|location|ort|standort|lagerort", Places},
    {"place", "location|home|berth|mooring|liegeplatz|standort|ort", Boats},
    {"person",
     "person|owner|holder|held by|allocated to|worn by|assigned to|issued to|belongs "
     "to|wearer|user|besitzer|inhaber|träger|"
     "trägerin|eigentümer|ausgegeben an|zugeordnet|gehört",
     Items},
    {"person",
     "name|full name|member|crew member|person|people|volunteer|mitglied|vor und nachname|helfer|"
     "einsatzkraft|vollständiger name",
     People},
    {"state", "state|status|condition|serviceable|ok|usable|zustand|einsatzbereit|verfügbar|tauglich"},
    {"since", "since|state since|seit|zustand seit"},
    {"why", "why|reason|grund|warum|ursache"},
    {"made",
     "made|date made|date of manufacture|manufactured|manufacture date|manufacturing date|production date|"
     "produced|year made|year of manufacture|built|dom|mfg date|mfd|hergestellt|hergestellt am|"
     "herstellungsdatum|herstelldatum|herstellungsjahr|baujahr|produktionsdatum|produziert|herstellung"},
    {"first_use",
     "first use|first used|in use since|put into service|in service since|in service|date in service|"
     "commissioned|erste nutzung|erste benutzung|erstbenutzung|erstgebrauch|erster gebrauch|in gebrauch seit|"
     "im einsatz seit|indienststellung|in dienst seit|inbetriebnahme"},
    {"stamped",
     "stamped|expiry|expiry date|date of expiry|best before date|expires|expires on|expiration "
     "date|expiration|exp|use by|use by date|"
     "best before|replace by|valid until|end of life|ablauf|ablaufdatum|läuft ab|läuft ab am|ablauf "
     "am|gültig bis|"
     "verfällt|verfallsdatum|verfalldatum|verfall|haltbar bis|haltbarkeit|mhd|aussonderung|aufgedruckt"},
    {"registered",
     "registered|date registered|added|date added|purchased|purchase date|bought|date of purchase|acquired|"
     "registriert|erfasst|erfasst am|aufgenommen|gekauft|gekauft am|kaufdatum|anschaffung|anschaffungsdatum|"
     "beschafft|beschafft am",
     Items},
    {"maker", "maker|manufacturer|brand|make|supplier|hersteller|herstellerfirma|marke|fabrikat|firma"},
    {"gtin", "gtin|ean|ean code|ean 13|upc|article number|artikelnummer"},
    {"serial",
     "serial|serial no|serial number|serial nr|s n|sn|ser no|seriennummer|serien nr|seriennr|serial nummer|"
     "gerätenummer|fabriknummer|fabrik nr|fertigungsnummer"},
    {"batch",
     "batch|batch no|batch number|lot|lot no|lot number|charge|chargennummer|chargen nr|los|losnummer"},
    {"note",
     "note|notes|remark|remarks|comment|comments|notiz|notizen|bemerkung|bemerkungen|anmerkung|anmerkungen|"
     "hinweis|hinweise|kommentar|sonstiges"},
    {"quantity",
     "quantity|qty|number|no of|count|how many|pieces|pcs|amount|anzahl|menge|stück|stk|stückzahl", Items},
    {"quantity", "qty|number|count|how many|pieces|pcs|anzahl|menge|stück|stk|soll", ManifestLines},
    {"required", "must|mandatory|obligatory|pflicht|erforderlich|notwendig"},
    {"substitutes", "substitute|instead|or|ersatz|ersatzweise|stattdessen"},
    {"role", "role|function|rank|qualification|job|duty|rolle|funktion|aufgabe|dienststellung|qualifikation"},
    {"mass_kg", "mass|mass kg|weight|weight kg|kg|masse|gewicht|gewicht kg|körpergewicht"},
    {"chest_cm", "chest|chest cm|chest size|brust|brustumfang|brustumfang cm|brustweite"},
    {"worn", "worn by crew|personal protective|ppe|getragen|wird getragen|am körper|psa"},
    {"personal", "own|personal kit|issued|persönlich|personengebunden"},
    {"order_lead_days", "lead time|delivery days|lead days|order days|lieferzeit|lieferzeit tage|liefertage"},
    {"pack", "pack size|per pack|packung|packungsgröße|gebinde"},
    {"price", "cost|unit price|price each|preis|stückpreis|kosten|einzelpreis"},
    {"spares", "spare|reserve|reserven|ersatzbestand"},
    {"wanted", "target|stock wanted|soll|sollbestand"},
    {"mass_low_kg", "mass from|weight from|min weight|min mass|gewicht von|gewicht ab|mindestgewicht"},
    {"mass_high_kg", "mass to|weight to|max weight|max mass|gewicht bis|höchstgewicht"},
    {"chest_low_cm", "chest from|min chest|brust von|brustumfang von"},
    {"chest_high_cm", "chest to|max chest|brust bis|brustumfang bis"},
    {"source", "according to|reference|quelle|laut|vorschrift"},
    {"priority", "prio|priorität|rang"},
    {"until",
     "last day|left|left on|leaving date|member until|sold|sold on|letzter tag|ausgetreten|austritt|austritt "
     "am|austrittsdatum|mitglied bis|bis|verkauft|verkauft am|außer dienst"},
    {"check_every_days", "check every|days between checks|prüfung alle tage|kontrolle alle tage"},
    {"day", "date|on|datum|am|service date|date of service|inspected on|serviced on|geprüft am|gewartet "
            "am|prüfdatum|"
            "wartungsdatum"},
    {"part", "component|teil|bauteil"},
    {"rule", "service|inspection|test|prüfung|wartung|regel|art der prüfung"},
    {"passed", "pass|result|ok|bestanden|ergebnis|in ordnung"},
    {"by", "done by|inspector|inspected by|serviced by|tested by|reported by|von|durch|prüfer|geprüft "
           "von|gemeldet von"},
    {"event", "happening|what happened|ereignis|vorfall"},
    {"hours", "engine hours|running hours|stunden|betriebsstunden"},
    {"launches", "uses|trips|fahrten|einsätze|ausfahrten"},
    {"text", "entry|what|defect|fault|problem|report|eintrag|mangel|schaden|meldung|beschreibung"},
    {"severity", "seriousness|schwere|stufe"},
    {"closed", "closed on|done on|mended on|erledigt|erledigt am|behoben am"},
    {"closing", "action|what was done|maßnahme|was getan wurde"},
    {"phase", "when|wann"},
    {"point", "check point|what to check|question|prüfpunkt|punkt|frage"},
    {"unit", "einheit"},
    {"low", "from|min|minimum|von|mindestens"},
    {"high", "to|max|maximum|bis|höchstens"},
};

bool isMeaning(const Sheet& sheet, std::string_view meaning) {
    return sheet.indexOf(meaning) >= 0 ||
           (sheet.id == Items && (meaning == quantityMeaning || meaning == homeMeaning)) ||
           (isBySerial(sheet) && meaning == serialMeaning);
}

/// One word and what it may mean.
struct KnownWord {
    std::string_view meaning;
    std::optional<SheetId> sheet;
    int place = 0; ///< from 1, the surest
};

const std::unordered_map<std::string, std::vector<KnownWord>>& knownWords() {
    static const auto known = [] {
        std::unordered_map<std::string, std::vector<KnownWord>> words;
        for (const Words& each : headingWords) {
            int place = 0;
            for (std::string_view word : wordsOf(each.words))
                words[plainWord(word)].push_back({each.meaning, each.sheet, ++place});
        }
        return words;
    }();
    return known;
}

void addMeanings(const std::string& heading, const Sheet& sheet, int base,
                 std::vector<HeadingMeaning>& meanings) {
    if (heading.empty()) return;
    std::string name = heading;
    std::replace(name.begin(), name.end(), ' ', '_');
    for (std::string_view meaning : allMeanings(sheet))
        if (meaning == name) meanings.push_back({meaning, base});
    const auto found = knownWords().find(heading);
    if (found == knownWords().end()) return;
    for (const KnownWord& word : found->second)
        if (word.sheet.value_or(sheet.id) == sheet.id && isMeaning(sheet, word.meaning))
            meanings.push_back({word.meaning, base + word.place});
}

void replaceAll(std::string& text, std::string_view what, std::string_view by) {
    for (auto at = text.find(what); at != std::string::npos; at = text.find(what, at + by.size()))
        text.replace(at, what.size(), by);
}

} // namespace

std::string plainWord(std::string_view text) {
    std::string folded = foldName(text);
    for (const auto& [umlaut, letters] : {std::pair("ä", "ae"),
                                          {"ö", "oe"},
                                          {"ü", "ue"},
                                          {"ß", "ss"},
                                          {"\u00A0", " "},
                                          {"\u2013", " "},
                                          {"\u00AD", ""},
                                          {"№", "no"}})
        replaceAll(folded, umlaut, letters);
    std::string plain;
    for (char c : folded) {
        const bool isPunctuation =
            static_cast<unsigned char>(c) < 128 && !((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9'));
        if (!isPunctuation)
            plain += c;
        else if (!plain.empty() && plain.back() != ' ')
            plain += ' ';
    }
    if (plain.ends_with(' ')) plain.pop_back();
    return plain;
}

std::vector<std::string_view> wordsOf(std::string_view list) {
    std::vector<std::string_view> words;
    while (!list.empty()) {
        const auto bar = std::min(list.find('|'), list.size());
        words.push_back(list.substr(0, bar));
        list.remove_prefix(std::min(bar + 1, list.size()));
    }
    return words;
}

std::string plainHeading(std::string_view text) {
    std::string outside;
    int depth = 0;
    for (char c : text) {
        if (c == '(' || c == '[') ++depth;
        if (depth == 0) outside += c;
        if ((c == ')' || c == ']') && depth > 0) --depth;
    }
    return plainWord(outside);
}

std::vector<HeadingMeaning> meaningsOf(std::string_view heading, const Sheet& sheet) {
    std::vector<HeadingMeaning> meanings;
    const std::string whole = plainWord(heading);
    addMeanings(whole, sheet, 0, meanings);
    if (const std::string bare = plainHeading(heading); bare != whole) addMeanings(bare, sheet, 1, meanings);
    std::stable_sort(meanings.begin(), meanings.end(),
                     [](const auto& a, const auto& b) { return a.rank < b.rank; });
    return meanings;
}

bool isBySerial(const Sheet& sheet) {
    return sheet.id != Items && sheet.indexOf("code") == 0 && sheet.indexOf(serialMeaning) < 0;
}

std::vector<std::string_view> allMeanings(const Sheet& sheet) {
    std::vector<std::string_view> meanings;
    for (const Column& column : sheet.columns)
        meanings.push_back(column.name);
    if (sheet.id == Items) meanings.insert(meanings.end(), {quantityMeaning, homeMeaning});
    if (isBySerial(sheet)) meanings.push_back(serialMeaning);
    return meanings;
}

} // namespace core
