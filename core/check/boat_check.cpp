#include "core/check/boat_check.h"

#include "core/check/judges.h"

namespace core {

CheckAnswer judge(const BoatCheckInput& input) {
    switch (input.phase) {
    case Phase::Return:
        return judgeReturn(input);
    case Phase::Stocktake:
        return judgeStocktake(input);
    default:
        return judgeLaunch(input);
    }
}

} // namespace core
