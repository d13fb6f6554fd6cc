#include "app/text/register_words.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/register/cell_values.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace app {
namespace {

using core::SheetId;

struct RegisterWordsText {
    Q_DECLARE_TR_FUNCTIONS(RegisterWords)
};

struct ColumnWords {
    std::string_view column;
    const char* word;
    const char* unit = nullptr;
    const char* hint = nullptr;
    std::optional<SheetId> sheet = std::nullopt; ///< only there; such a row stands before the general one
};

constexpr ColumnWords columnWords[] = {
    // Names of rows, and what they refer to.
    {"boat", QT_TRANSLATE_NOOP("RegisterWords", "home boat"), nullptr, nullptr, SheetId::Items},
    {"boat", QT_TRANSLATE_NOOP("RegisterWords", "boat")},
    {"boat_class", QT_TRANSLATE_NOOP("RegisterWords", "class"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords", "boats of one class are asked the same kit")},
    {"code", QT_TRANSLATE_NOOP("RegisterWords", "tag")},
    {"kit_type", QT_TRANSLATE_NOOP("RegisterWords", "kit type")},
    {"part", QT_TRANSLATE_NOOP("RegisterWords", "part"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords", "empty: the whole thing"), SheetId::LifeRules},
    {"part", QT_TRANSLATE_NOOP("RegisterWords", "part")},
    {"person", QT_TRANSLATE_NOOP("RegisterWords", "whose"), nullptr, nullptr, SheetId::Items},
    {"person", QT_TRANSLATE_NOOP("RegisterWords", "name")},
    {"place", QT_TRANSLATE_NOOP("RegisterWords", "home place"), nullptr, nullptr, SheetId::Items},
    {"place", QT_TRANSLATE_NOOP("RegisterWords", "lies at"), nullptr, nullptr, SheetId::Boats},
    {"place", QT_TRANSLATE_NOOP("RegisterWords", "place")},
    {"size", QT_TRANSLATE_NOOP("RegisterWords", "size")},
    {"tag", QT_TRANSLATE_NOOP("RegisterWords", "tag"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords", "the code printed on it; scan it here")},
    // Boats, people and places.
    {"priority", QT_TRANSLATE_NOOP("RegisterWords", "importance"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords", "a higher number is made ready first")},
    {"check_every_days", QT_TRANSLATE_NOOP("RegisterWords", "check every"),
     QT_TRANSLATE_NOOP("RegisterWords", "days"),
     QT_TRANSLATE_NOOP("RegisterWords", "empty: a check holds until something changes")},
    {"role", QT_TRANSLATE_NOOP("RegisterWords", "role")},
    {"mass_kg", QT_TRANSLATE_NOOP("RegisterWords", "weight"), QT_TRANSLATE_NOOP("RegisterWords", "kg")},
    {"chest_cm", QT_TRANSLATE_NOOP("RegisterWords", "chest"), QT_TRANSLATE_NOOP("RegisterWords", "cm")},
    {"until", QT_TRANSLATE_NOOP("RegisterWords", "here until")},
    // Kit types and sizes.
    {"worn", QT_TRANSLATE_NOOP("RegisterWords", "worn on the body")},
    {"personal", QT_TRANSLATE_NOOP("RegisterWords", "each person has their own")},
    {"order_lead_days", QT_TRANSLATE_NOOP("RegisterWords", "delivery takes"),
     QT_TRANSLATE_NOOP("RegisterWords", "days")},
    {"pack", QT_TRANSLATE_NOOP("RegisterWords", "sold in packs of")},
    {"price", QT_TRANSLATE_NOOP("RegisterWords", "price of one")},
    {"spares", QT_TRANSLATE_NOOP("RegisterWords", "spares to hold")},
    {"mass_low_kg", QT_TRANSLATE_NOOP("RegisterWords", "weight from"),
     QT_TRANSLATE_NOOP("RegisterWords", "kg")},
    {"mass_high_kg", QT_TRANSLATE_NOOP("RegisterWords", "weight to"),
     QT_TRANSLATE_NOOP("RegisterWords", "kg")},
    {"chest_low_cm", QT_TRANSLATE_NOOP("RegisterWords", "chest from"),
     QT_TRANSLATE_NOOP("RegisterWords", "cm")},
    {"chest_high_cm", QT_TRANSLATE_NOOP("RegisterWords", "chest to"),
     QT_TRANSLATE_NOOP("RegisterWords", "cm")},
    {"wanted", QT_TRANSLATE_NOOP("RegisterWords", "wanted for the boats")},
    // Life rules.
    {"rule", QT_TRANSLATE_NOOP("RegisterWords", "name of the rule")},
    {"kind", QT_TRANSLATE_NOOP("RegisterWords", "how it is checked"), nullptr, nullptr, SheetId::Points},
    {"kind", QT_TRANSLATE_NOOP("RegisterWords", "kind of rule")},
    {"n", QT_TRANSLATE_NOOP("RegisterWords", "how many")},
    {"steps", QT_TRANSLATE_NOOP("RegisterWords", "otherwise with age"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords",
                       "108:12 is “12 from the age of 108 months on”; several with ; between")},
    {"event", QT_TRANSLATE_NOOP("RegisterWords", "event")},
    {"severity", QT_TRANSLATE_NOOP("RegisterWords", "when overdue")},
    {"lead_days", QT_TRANSLATE_NOOP("RegisterWords", "days' notice")},
    {"tolerance", QT_TRANSLATE_NOOP("RegisterWords", "tolerance"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords", "none, end of the month, or days such as 14 days")},
    {"strict", QT_TRANSLATE_NOOP("RegisterWords", "the day itself is too late")},
    {"undated", QT_TRANSLATE_NOOP("RegisterWords", "without a date")},
    {"source", QT_TRANSLATE_NOOP("RegisterWords", "source"), nullptr,
     QT_TRANSLATE_NOOP("RegisterWords", "where it says so: manual, standard, the club's own decision")},
    // Items and parts.
    {"state", QT_TRANSLATE_NOOP("RegisterWords", "state")},
    {"since", QT_TRANSLATE_NOOP("RegisterWords", "since")},
    {"why", QT_TRANSLATE_NOOP("RegisterWords", "why")},
    {"made", QT_TRANSLATE_NOOP("RegisterWords", "made")},
    {"first_use", QT_TRANSLATE_NOOP("RegisterWords", "first used")},
    {"stamped", QT_TRANSLATE_NOOP("RegisterWords", "expiry stamped on it")},
    {"registered", QT_TRANSLATE_NOOP("RegisterWords", "registered")},
    {"maker", QT_TRANSLATE_NOOP("RegisterWords", "maker")},
    {"gtin", QT_TRANSLATE_NOOP("RegisterWords", "GTIN")},
    {"serial", QT_TRANSLATE_NOOP("RegisterWords", "serial number")},
    {"batch", QT_TRANSLATE_NOOP("RegisterWords", "batch")},
    {"note", QT_TRANSLATE_NOOP("RegisterWords", "note")},
    // Manifests and records.
    {"quantity", QT_TRANSLATE_NOOP("RegisterWords", "how many")},
    {"required", QT_TRANSLATE_NOOP("RegisterWords", "required")},
    {"substitutes", QT_TRANSLATE_NOOP("RegisterWords", "may stand in")},
    {"phase", QT_TRANSLATE_NOOP("RegisterWords", "in which check")},
    {"point", QT_TRANSLATE_NOOP("RegisterWords", "point")},
    {"unit", QT_TRANSLATE_NOOP("RegisterWords", "unit")},
    {"low", QT_TRANSLATE_NOOP("RegisterWords", "at least")},
    {"high", QT_TRANSLATE_NOOP("RegisterWords", "at most")},
    {"day", QT_TRANSLATE_NOOP("RegisterWords", "day")},
    {"passed", QT_TRANSLATE_NOOP("RegisterWords", "passed")},
    {"by", QT_TRANSLATE_NOOP("RegisterWords", "by")},
    {"hours", QT_TRANSLATE_NOOP("RegisterWords", "hours")},
    {"launches", QT_TRANSLATE_NOOP("RegisterWords", "launches")},
    {"text", QT_TRANSLATE_NOOP("RegisterWords", "what is the matter")},
    {"closed", QT_TRANSLATE_NOOP("RegisterWords", "closed")},
    {"closing", QT_TRANSLATE_NOOP("RegisterWords", "what was done")},
};

struct ChoiceWords {
    std::string_view column;
    std::string_view choice;
    const char* word;
};

constexpr ChoiceWords choiceWords[] = {
    {"severity", "stop", QT_TRANSLATE_NOOP("RegisterWords", "a stop")},
    {"severity", "remark", QT_TRANSLATE_NOOP("RegisterWords", "a remark")},
    {"undated", "stop", QT_TRANSLATE_NOOP("RegisterWords", "a stop")},
    {"undated", "remark", QT_TRANSLATE_NOOP("RegisterWords", "a remark")},
    {"undated", "ignore", QT_TRANSLATE_NOOP("RegisterWords", "nothing")},
    {"kind", "stamped", QT_TRANSLATE_NOOP("RegisterWords", "ends as stamped")},
    {"kind", "from_made", QT_TRANSLATE_NOOP("RegisterWords", "ends by age")},
    {"kind", "from_first_use", QT_TRANSLATE_NOOP("RegisterWords", "ends after first use")},
    {"kind", "year_end_from_made", QT_TRANSLATE_NOOP("RegisterWords", "ends with a year")},
    {"kind", "inspect_every", QT_TRANSLATE_NOOP("RegisterWords", "inspect")},
    {"kind", "service_every", QT_TRANSLATE_NOOP("RegisterWords", "service")},
    {"kind", "every_hours", QT_TRANSLATE_NOOP("RegisterWords", "look at it by hours")},
    {"kind", "every_uses", QT_TRANSLATE_NOOP("RegisterWords", "look at it by launches")},
    {"kind", "after_event", QT_TRANSLATE_NOOP("RegisterWords", "look at it after an event")},
    {"role", "crew", QT_TRANSLATE_NOOP("RegisterWords", "crew")},
    {"role", "driver", QT_TRANSLATE_NOOP("RegisterWords", "driver")},
    {"role", "gear officer", QT_TRANSLATE_NOOP("RegisterWords", "gear officer")},
    {"state", "serviceable", QT_TRANSLATE_NOOP("RegisterWords", "serviceable")},
    {"state", "unserviceable", QT_TRANSLATE_NOOP("RegisterWords", "unserviceable")},
    {"state", "missing", QT_TRANSLATE_NOOP("RegisterWords", "missing")},
    {"state", "written off", QT_TRANSLATE_NOOP("RegisterWords", "written off")},
    {"why", "lost", QT_TRANSLATE_NOOP("RegisterWords", "lost")},
    {"why", "damaged", QT_TRANSLATE_NOOP("RegisterWords", "damaged")},
    {"why", "worn", QT_TRANSLATE_NOOP("RegisterWords", "worn")},
    {"why", "expired", QT_TRANSLATE_NOOP("RegisterWords", "expired")},
    {"why", "mistake", QT_TRANSLATE_NOOP("RegisterWords", "registered by mistake")},
    {"tolerance", "none", QT_TRANSLATE_NOOP("RegisterWords", "none")},
    {"tolerance", "end_of_month", QT_TRANSLATE_NOOP("RegisterWords", "end of the month")},
    {"phase", "launch", QT_TRANSLATE_NOOP("RegisterWords", "launch")},
    {"phase", "return", QT_TRANSLATE_NOOP("RegisterWords", "return")},
    {"kind", "look", QT_TRANSLATE_NOOP("RegisterWords", "a look")},
    {"kind", "measure", QT_TRANSLATE_NOOP("RegisterWords", "a measure")},
    {"kind", "timed", QT_TRANSLATE_NOOP("RegisterWords", "timed")},
};

const ColumnWords* wordsOf(SheetId sheet, std::string_view column) {
    const auto* const found =
        std::find_if(std::begin(columnWords), std::end(columnWords), [&](const ColumnWords& each) {
            return each.column == column && each.sheet.value_or(sheet) == sheet;
        });
    return found == std::end(columnWords) ? nullptr : found;
}

QString wordOrNothing(const char* word) {
    return word ? RegisterWordsText::tr(word) : QString();
}

} // namespace

QString columnInWords(SheetId sheet, std::string_view column) {
    const ColumnWords* words = wordsOf(sheet, column);
    return words ? RegisterWordsText::tr(words->word) : text(std::string(column));
}

QString unitOf(SheetId sheet, std::string_view column) {
    const ColumnWords* words = wordsOf(sheet, column);
    return words ? wordOrNothing(words->unit) : QString();
}

QString hintOf(SheetId sheet, std::string_view column) {
    const ColumnWords* words = wordsOf(sheet, column);
    return words ? wordOrNothing(words->hint) : QString();
}

QString choiceInWords(const core::Column& column, const std::string& choice) {
    if (column.type == core::CellType::YesNo && (choice == "yes" || choice == "no"))
        return choice == "yes" ? RegisterWordsText::tr("yes") : RegisterWordsText::tr("no");
    const auto tolerance =
        column.type == core::CellType::Tolerance ? core::toleranceFrom(choice) : std::nullopt;
    if (tolerance && tolerance->kind == core::Tolerance::Kind::Days)
        return counted(tolerance->days, QT_TRANSLATE_N_NOOP("Words", "%n day"),
                       QT_TRANSLATE_N_NOOP("Words", "%n days"));
    const auto* const found =
        std::find_if(std::begin(choiceWords), std::end(choiceWords), [&](const ChoiceWords& each) {
            return each.column == column.name && each.choice == choice;
        });
    return found == std::end(choiceWords) ? text(choice) : RegisterWordsText::tr(found->word);
}

QString writtenOffAs(const std::string& why) {
    return choiceInWords(core::sheet(SheetId::Items).column("why"), why);
}

QString countedBy(const std::string& ruleKind) {
    if (ruleKind == "year_end_from_made") return RegisterWordsText::tr("years");
    if (ruleKind == "every_hours") return RegisterWordsText::tr("hours");
    if (ruleKind == "every_uses") return RegisterWordsText::tr("launches");
    if (ruleKind == "stamped" || ruleKind == "after_event" || ruleKind.empty()) return {};
    return RegisterWordsText::tr("months");
}

QString rowsInWords(SheetId sheet) {
    switch (sheet) {
    case SheetId::Boats:
        return RegisterWordsText::tr("boats");
    case SheetId::People:
        return RegisterWordsText::tr("people");
    case SheetId::Places:
        return RegisterWordsText::tr("places");
    case SheetId::KitTypes:
        return RegisterWordsText::tr("kit types");
    case SheetId::Sizes:
        return RegisterWordsText::tr("sizes");
    case SheetId::LifeRules:
        return RegisterWordsText::tr("life rules");
    case SheetId::Items:
        return RegisterWordsText::tr("kit");
    case SheetId::Parts:
        return RegisterWordsText::tr("parts");
    case SheetId::ManifestLines:
        return RegisterWordsText::tr("manifest lines");
    case SheetId::Points:
        return RegisterWordsText::tr("points");
    case SheetId::Services:
        return RegisterWordsText::tr("service records");
    case SheetId::Happenings:
        return RegisterWordsText::tr("what happened");
    case SheetId::Use:
        return RegisterWordsText::tr("hours and launches");
    case SheetId::Log:
        return RegisterWordsText::tr("log entries");
    }
    return text(std::string(core::sheet(sheet).name()));
}

} // namespace app
