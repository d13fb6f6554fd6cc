#pragma once

#include "core/check/boat_check.h"
#include "tests/core/base/days.h"
#include "tests/core/register/item_names.h"

#include <string>
#include <vector>

namespace core {

/// Builds the input of a check of the boat "Heron" on 14 March 2026.
struct CheckBuilder {
    BoatCheckInput input{
        .location = Location::boat("Heron"), .phase = Phase::Launch, .today = day("2026-03-14")};

    KitType& type(const std::string& name) {
        KitType& kitType = input.kitTypes[name];
        kitType.name = name;
        return kitType;
    }

    KitType& wornType(const std::string& name) {
        type(name).worn = true;
        return type(name);
    }

    KitType& personalType(const std::string& name) {
        type(name).personal = true;
        return type(name);
    }

    /// Sized S to 60 kg, M from 60 to 90 kg, and L from 90 kg, both ends included.
    KitType& sizedType(const std::string& name) {
        wornType(name).sizes = {
            {"S", {{}, 60.0}, {}, {}, {}}, {"M", {60.0, 90.0}, {}, {}, {}}, {"L", {90.0, {}}, {}, {}, {}}};
        return type(name);
    }

    ManifestLine& line(const std::string& kitType, int quantity = 1, bool required = true,
                       std::vector<std::string> substitutes = {}) {
        type(kitType);
        for (const std::string& substitute : substitutes)
            type(substitute);
        return input.lines.emplace_back(
            ManifestLine{kitType, quantity, required, std::move(substitutes), {}});
    }

    /// Serviceable and at home on the boat. The reference holds until the next item.
    SeenItem& see(const std::string& code, const std::string& kitType) {
        SeenItem seen;
        seen.record.item.id = code;
        seen.record.item.tag = tagOn(code);
        seen.record.item.kitType = kitType;
        seen.record.item.boat = "Heron";
        type(kitType);
        return input.seen.emplace_back(std::move(seen));
    }

    SeenItem& seeSized(const std::string& code, const std::string& kitType, const std::string& size) {
        SeenItem& seen = see(code, kitType);
        seen.record.item.size = size;
        return seen;
    }

    SeenItem& seeOf(const std::string& person, const std::string& code, const std::string& kitType) {
        SeenItem& seen = see(code, kitType);
        seen.record.item.person = person;
        return seen;
    }

    void name(const std::string& person, std::optional<double> massKg = {},
              std::optional<double> chestCm = {}) {
        Person named;
        named.name = person;
        named.massKg = massKg;
        named.chestCm = chestCm;
        input.people.push_back(named);
    }

    /// A required line that is filled, so that nothing is said of a boat of which nothing is asked.
    void somethingIsAsked() {
        line("bailer");
        see("KB", "bailer");
    }

    /// It went out: expected back.
    Item& out(const std::string& code, const std::string& kitType) {
        ItemRecord record;
        record.item.id = code;
        record.item.tag = tagOn(code);
        record.item.kitType = kitType;
        record.item.boat = "Heron";
        type(kitType);
        return input.expectedBack.emplace_back(std::move(record)).item;
    }

    void point(const std::string& point, PointKind kind, std::optional<double> value, Range limits = {},
               const std::string& unit = {}, bool required = true) {
        input.points.push_back({{point, kind, unit, limits, required, {}}, value});
    }

    CheckAnswer answer() const { return judge(input); }
};

inline LifeRule expiry(Severity severity = Severity::Stop) {
    LifeRule rule;
    rule.name = "expiry";
    rule.kind = RuleKind::Stamped;
    rule.severity = severity;
    return rule;
}

inline LifeRule yearlyService() {
    LifeRule rule;
    rule.name = "service";
    rule.kind = RuleKind::ServiceEvery;
    rule.n = 12;
    return rule;
}

/// "stop missing paddle x1": severity, kind, then what there is of kit type, code, and the number when it is
/// not one.
inline std::string briefOf(const Finding& finding) {
    std::string text = std::string(nameOf(finding.severity)) + ' ' + nameOf(finding.kind);
    for (const std::string& part : {finding.kitType, finding.item.id})
        if (!part.empty()) text += ' ' + part;
    return finding.quantity == 1 ? text : text + " x" + std::to_string(finding.quantity);
}

inline std::vector<std::string> briefOf(const CheckAnswer& answer) {
    std::vector<std::string> texts;
    for (const Finding& finding : answer.findings)
        texts.push_back(briefOf(finding));
    return texts;
}

/// "K1+ K2- ": the codes listed under a line, + for those that count.
inline std::string briefOf(const LineAnswer& line) {
    std::string text;
    for (const LineItem& item : line.items)
        text += item.item.id + (item.counts ? "+ " : "- ");
    return text;
}

inline const Finding* findingOf(const CheckAnswer& answer, FindingKind kind) {
    for (const Finding& finding : answer.findings)
        if (finding.kind == kind) return &finding;
    return nullptr;
}

} // namespace core
