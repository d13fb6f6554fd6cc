#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Import: rows that are taken as they are, and are not likely to be meant.
constexpr ErrorText textsOfWarnings[] = {
    {ErrorCode::ClassWithoutBoat,
     QT_TRANSLATE_NOOP("Errors", "no boat has the class '%1': its manifest is asked of none")},
    {ErrorCode::BoatWithoutManifest,
     QT_TRANSLATE_NOOP("Errors", "nothing is asked of '%1' (class '%2'): neither it nor its class has a "
                                 "manifest, so the boat will never be kit ready")},
    {ErrorCode::ClassLikeAnother,
     QT_TRANSLATE_NOOP("Errors", "the class '%1' is almost '%2': if they are one, write them alike")},
    {ErrorCode::KitTypeLikeAnother,
     QT_TRANSLATE_NOOP("Errors", "the kit type '%1' is almost '%2': if they are one, write them alike")},
    {ErrorCode::TypeWithoutItem,
     QT_TRANSLATE_NOOP("Errors", "a '%1' is asked for, and the club has none: each check will miss it")},
    {ErrorCode::RuleWithoutSource,
     QT_TRANSLATE_NOOP("Errors",
                       "the rule '%1' of '%2' has no source: write who says so, such as the maker's "
                       "manual")},
    {ErrorCode::JacketNotWorn,
     QT_TRANSLATE_NOOP("Errors", "'%1' is not marked as worn: no check will ask whether it fits")},
    {ErrorCode::KitOfEnded,
     QT_TRANSLATE_NOOP("Errors", "the last day of '%1' is %2, and kit that is not written off belongs there: "
                                 "%3. Move it to another boat, place or person")},
};

static_assert(isWhole(textsOfWarnings, ErrorCode::ClassWithoutBoat, ErrorCode::SpreadsheetMissing),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> warningTexts() {
    return textsOfWarnings;
}

} // namespace app
