#include "core/check/boat_check.h"

#include <iterator>

namespace core {

const char* nameOf(Phase phase) {
    switch (phase) {
    case Phase::Return:
        return "return";
    case Phase::Stocktake:
        return "stocktake";
    default:
        return "launch";
    }
}

std::optional<Phase> phaseNamed(std::string_view name) {
    for (const Phase phase : {Phase::Launch, Phase::Return, Phase::Stocktake})
        if (name == nameOf(phase)) return phase;
    return std::nullopt;
}

Phase phaseOf(const std::string& name) {
    return phaseNamed(name).value_or(Phase::Launch);
}

Location locationOf(Phase phase, std::string name) {
    return phase == Phase::Stocktake ? Location::place(std::move(name)) : Location::boat(std::move(name));
}

const char* nameOf(CheckOutcome outcome) {
    switch (outcome) {
    case CheckOutcome::Complete:
        return "complete";
    case CheckOutcome::CompleteWithRemarks:
        return "complete-with-remarks";
    default:
        return "incomplete";
    }
}

const char* nameOf(PointState state) {
    switch (state) {
    case PointState::Done:
        return "done";
    case PointState::OutOfRange:
        return "out-of-range";
    default:
        return "open";
    }
}

const char* nameOf(Severity severity) {
    return severity == Severity::Stop ? "stop" : "remark";
}

const char* nameOf(FindingKind kind) {
    static constexpr const char* names[] = {
        "missing",       "no-fit",      "out-of-date",        "undated",         "service-overdue",
        "unserviceable", "written-off", "wrong-size",         "fit-not-checked", "person-not-checked",
        "other-person",  "other-boat",  "was-missing",        "unknown-tag",     "due-soon",
        "extra",         "point-open",  "point-out-of-range", "log-open",        "not-returned",
        "swapped",       "no-manifest",
    };
    static_assert(std::size(names) == static_cast<std::size_t>(FindingKind::NoManifest) + 1);
    return names[static_cast<std::size_t>(kind)];
}

} // namespace core
