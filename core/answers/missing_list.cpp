#include "core/answers/missing_list.h"

namespace core {

const char* nameOf(ChainLink::What what) {
    switch (what) {
    case ChainLink::What::Launched:
        return "launched";
    case ChainLink::What::Seen:
        return "seen";
    case ChainLink::What::Returned:
        return "returned";
    case ChainLink::What::NotReturned:
        return "not-returned";
    case ChainLink::What::MarkedMissing:
        return "marked-missing";
    }
    return "";
}

} // namespace core
