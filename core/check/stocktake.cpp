#include "core/check/stocktake.h"

#include "core/check/expected_kit.h"

namespace core {
namespace {

Finding notThere(const Item& item) {
    Finding finding;
    finding.kind = FindingKind::Missing;
    finding.severity = Severity::Stop;
    finding.kitType = item.kitType;
    finding.code = item.code;
    finding.size = item.size;
    return finding;
}

Finding fromElsewhere(const JudgedItem& item) {
    Finding finding = findingAbout(item, FindingKind::Extra, Severity::Remark);
    finding.boat = item.item().boat.empty() ? item.item().place : item.item().boat;
    return finding;
}

} // namespace

CheckAnswer judgeStocktake(const BoatCheckInput& input) {
    return judgeExpected(input, {notThere, fromElsewhere});
}

} // namespace core
