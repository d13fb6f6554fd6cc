#include "core/upkeep/service_round.h"

namespace core {

const char* nameOf(ServiceRound::Refusal why) {
    switch (why) {
    case ServiceRound::Refusal::NoSuchRule:
        return "no-such-rule";
    case ServiceRound::Refusal::WrittenOff:
        return "written-off";
    case ServiceRound::Refusal::DoneAlready:
        return "done-already";
    default:
        return "unknown-tag";
    }
}

} // namespace core
