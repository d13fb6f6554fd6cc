#include "app/cli/json/json_out.h"

#include "app/cli/json/json_parts.h"
#include "app/text/errors.h"
#include "core/base/error_code.h"

namespace app {
namespace {

using core::ErrorCode;

/// For programs that read the answer: it stays whatever the sentence becomes.
const char* problemKind(ErrorCode code) {
    switch (code) {
    case ErrorCode::FactsMissing:
        return "facts-missing";
    case ErrorCode::FactOutOfChain:
        return "fact-out-of-chain";
    case ErrorCode::FactBodyChanged:
    case ErrorCode::FactChanged:
        return "fact-changed";
    case ErrorCode::FactNotSigned:
        return "fact-not-signed";
    case ErrorCode::MachineUnknown:
        return "machine-unknown";
    case ErrorCode::FactImpossible:
        return "fact-impossible";
    case ErrorCode::FactsCutOff:
        return "facts-cut-off";
    case ErrorCode::PrivateCellChanged:
        return "private-changed";
    case ErrorCode::PrivateCellMissing:
        return "private-missing";
    case ErrorCode::PrivateCellStray:
        return "private-stray";
    case ErrorCode::PhotoChanged:
        return "photo-changed";
    case ErrorCode::PhotoMissing:
        return "photo-missing";
    case ErrorCode::PhotoStray:
        return "photo-stray";
    case ErrorCode::SchemaDiffers:
        return "schema-differs";
    case ErrorCode::TableDiffers:
        return "table-differs";
    case ErrorCode::FileUnsound:
        return "file-unsound";
    default:
        return "unreadable";
    }
}

Json problem(const core::Error& each) {
    return {{"kind", problemKind(each.code)},
            {"where", placeInWords(each).toStdString()},
            {"what", errorInWords(each).toStdString()}};
}

Json machine(const core::MachineRecord& each) {
    return {{"machine", each.machine}, {"name", orNull(each.name)},   {"facts", each.facts},
            {"head", each.head},       {"first", orNull(each.first)}, {"newest", orNull(each.newest)},
            {"signed", each.isSigned}};
}

} // namespace

std::string verificationJson(const core::Verification& verification) {
    return written(
        {{"facts", verification.facts},
         {"devices", verification.machines.size()},
         {"machines", listOf(verification.machines, machine)},
         {"erased", verification.erased},
         {"not_here", verification.notHere},
         {"photos", {{"count", verification.photos}, {"kb", (verification.photoBytes + 999) / 1000}}},
         {"head", orNull(verification.head)},
         {"problems", listOf(verification.problems, problem)}});
}

} // namespace app
