#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Manifests, plans and service rounds.
constexpr ErrorText textsOfManifests[] = {
    {ErrorCode::QuantityNegative, QT_TRANSLATE_NOOP("Errors", "a manifest asks for no less than nothing"),
     QT_TRANSLATE_NOOP("Errors", "write 0 or more")},
    {ErrorCode::LineChanged, QT_TRANSLATE_NOOP("Errors", "the line of %1 was changed meanwhile"),
     QT_TRANSLATE_NOOP("Errors", "look at it again, then save it")},
    {ErrorCode::PointChanged, QT_TRANSLATE_NOOP("Errors", "the point %1 was changed meanwhile"),
     QT_TRANSLATE_NOOP("Errors", "look at it again, then save it")},
    {ErrorCode::ManifestRowRejected, "%1", QT_TRANSLATE_NOOP("Errors", "correct it, then save it again")},
    {ErrorCode::NoOwnLine, QT_TRANSLATE_NOOP("Errors", "%1 has no line of its own for %2"),
     QT_TRANSLATE_NOOP("Errors", "it is asked as its class already")},
    {ErrorCode::PointTakenAtLaunch,
     QT_TRANSLATE_NOOP("Errors", "there is a point %1 in the launch check already"),
     QT_TRANSLATE_NOOP("Errors", "give it another name, or change the one that is there")},
    {ErrorCode::PointTakenAtReturn,
     QT_TRANSLATE_NOOP("Errors", "there is a point %1 in the return check already"),
     QT_TRANSLATE_NOOP("Errors", "give it another name, or change the one that is there")},
    {ErrorCode::PointOfClass, QT_TRANSLATE_NOOP("Errors", "%1 is a point of the boat's class"),
     QT_TRANSLATE_NOOP("Errors", "rename it in the class, or add a point of another name")},
    {ErrorCode::BoatHasOwnPoint, QT_TRANSLATE_NOOP("Errors", "%1 has its own point %2"),
     QT_TRANSLATE_NOOP("Errors", "make it as the class first, then rename it")},
    {ErrorCode::NoOwnPoint, QT_TRANSLATE_NOOP("Errors", "%1 has no point %2 of its own"),
     QT_TRANSLATE_NOOP("Errors", "a boat cannot leave a point of its class out: write it as not required")},
    {ErrorCode::ServiceInFuture,
     QT_TRANSLATE_NOOP("Errors", "the day of the service, %1, is still to come; today is %2"),
     QT_TRANSLATE_NOOP("Errors", "give the day on which it was done")},
    {ErrorCode::HorizonOutOfRange, QT_TRANSLATE_NOOP("Errors", "a horizon of %1 months is not possible"),
     QT_TRANSLATE_NOOP("Errors", "give 1 to 1200")},
    {ErrorCode::ConfidenceOutOfRange, QT_TRANSLATE_NOOP("Errors", "a confidence of %1 is not possible"),
     QT_TRANSLATE_NOOP("Errors", "give a number above 0 and below 1, like 0.95")},
    {ErrorCode::CoverOutOfRange, QT_TRANSLATE_NOOP("Errors", "a cover of %1 months is not possible"),
     QT_TRANSLATE_NOOP("Errors", "give 0 to 1200")},
    {ErrorCode::MarginOutOfRange, QT_TRANSLATE_NOOP("Errors", "a margin of %1 days is not possible"),
     QT_TRANSLATE_NOOP("Errors", "give 0 to 3650")},
    {ErrorCode::PriorOutOfRange,
     QT_TRANSLATE_NOOP("Errors", "losses and item-years believed beforehand are more than 0"),
     QT_TRANSLATE_NOOP("Errors", "give both, like 0.5 in 10")},
};

static_assert(isWhole(textsOfManifests, ErrorCode::QuantityNegative, ErrorCode::TagLength),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> manifestTexts() {
    return textsOfManifests;
}

} // namespace app
