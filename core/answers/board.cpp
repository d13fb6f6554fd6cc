#include "core/answers/board.h"

namespace core {

const char* nameOf(BoatCondition::Kind kind) {
    switch (kind) {
    case BoatCondition::Kind::NotReady:
        return "not-ready";
    case BoatCondition::Kind::Out:
        return "out";
    case BoatCondition::Kind::RescueReady:
        return "rescue-ready";
    }
    return "";
}

} // namespace core
