#include "core/check/points.h"

#include "core/upkeep/same_name.h"

#include <algorithm>
#include <cmath>

namespace core {
namespace {

constexpr double lookDone = 1;
constexpr double absoluteZero = -273.15; // °C

/// No thermometer shows it.
bool isNoTemperature(const PointRecord& record) {
    return record.point.kind == PointKind::Measure && sameName(record.point.unit, "°C") &&
           *record.value <= absoluteZero;
}

PointState stateOf(const PointRecord& record) {
    if (!record.value || !std::isfinite(*record.value)) return PointState::Open;
    if (record.point.kind == PointKind::Look)
        return *record.value == lookDone ? PointState::Done : PointState::Open;
    if (isNoTemperature(record)) return PointState::OutOfRange;
    return record.point.limits.holds(*record.value) ? PointState::Done : PointState::OutOfRange;
}

std::optional<double> measured(const std::vector<PointRecord>& records, std::string_view point,
                               std::string_view unit) {
    const auto found = std::find_if(records.begin(), records.end(), [&](const PointRecord& r) {
        return r.point.kind == PointKind::Measure && sameName(r.point.name, point) &&
               sameName(r.point.unit, unit);
    });
    return found == records.end() ? std::nullopt : found->value;
}

constexpr std::string_view atmospherePoint = "atmospheric pressure";

double atmosphereKpa(const std::vector<PointRecord>& records) {
    if (const auto kpa = measured(records, atmospherePoint, "kPa")) return *kpa;
    if (const auto hpa = measured(records, atmospherePoint, "hPa")) return *hpa / 10;
    return standardAtmosphereKpa;
}

bool isChamber(const BoatPoint& point) {
    return point.kind == PointKind::Measure && sameName(point.unit, "kPa") &&
           !sameName(point.name, atmospherePoint);
}

void addPressuresAfloat(std::vector<PointAnswer>& answers, const std::vector<PointRecord>& records) {
    const auto air = measured(records, "air temperature", "°C");
    const auto water = measured(records, "water temperature", "°C");
    if (!air || !water || *air <= absoluteZero || *water <= absoluteZero) return;
    for (PointAnswer& answer : answers)
        if (answer.value && isChamber(answer.point))
            answer.afloat = pressureAfloatKpa(*answer.value, *air, *water, atmosphereKpa(records));
}

bool leavesRangeAfloat(const PointAnswer& answer) {
    return answer.state == PointState::Done && answer.afloat && !answer.point.limits.holds(*answer.afloat);
}

Finding findingOf(const PointAnswer& answer) {
    Finding finding;
    finding.kind = answer.state == PointState::Open ? FindingKind::PointOpen : FindingKind::PointOutOfRange;
    finding.severity =
        answer.point.required && answer.state != PointState::Done ? Severity::Stop : Severity::Remark;
    finding.text = answer.point.name;
    finding.value = answer.value;
    finding.unit = answer.point.unit;
    finding.low = answer.point.limits.low;
    finding.high = answer.point.limits.high;
    if (leavesRangeAfloat(answer)) finding.afloat = answer.afloat;
    return finding;
}

} // namespace

std::vector<PointAnswer> answerPoints(const std::vector<PointRecord>& records) {
    std::vector<PointAnswer> answers;
    for (const PointRecord& record : records)
        answers.push_back({record.point, stateOf(record), record.value, std::nullopt});
    addPressuresAfloat(answers, records);
    return answers;
}

std::vector<Finding> findingsOf(const std::vector<PointAnswer>& points) {
    std::vector<Finding> findings;
    for (const PointAnswer& answer : points)
        if (answer.state != PointState::Done || leavesRangeAfloat(answer))
            findings.push_back(findingOf(answer));
    return findings;
}

} // namespace core
