#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// PINs, and who may do what.
constexpr ErrorText textsOfPins[] = {
    {ErrorCode::PinNeeded,
     QT_TRANSLATE_NOOP("Errors", "this is a gear officer's to do, and needs the PIN of %1"),
     QT_TRANSLATE_NOOP("Errors",
                       "give the PIN in the page, or on the command line with --by and --pin-file")},
    {ErrorCode::PinWrong, QT_TRANSLATE_NOOP("Errors", "this is not the PIN of %1"),
     QT_TRANSLATE_NOOP("Errors", "give it again; after five wrong ones there is a wait")},
    {ErrorCode::PinWait,
     QT_TRANSLATE_NOOP("Errors", "after several wrong PINs for %2 the next one has to wait for %1 seconds"),
     QT_TRANSLATE_NOOP("Errors", "give it then")},
    {ErrorCode::PinLength, QT_TRANSLATE_NOOP("Errors", "a PIN has 4 to 12 characters"),
     QT_TRANSLATE_NOOP("Errors", "choose digits, letters or both, without blanks at the ends")},
    {ErrorCode::PinUnseen, QT_TRANSLATE_NOOP("Errors", "the PIN holds a character that cannot be seen"),
     QT_TRANSLATE_NOOP("Errors", "type it anew")},
    {ErrorCode::NoPinSet, QT_TRANSLATE_NOOP("Errors", "%1 has no PIN"),
     QT_TRANSLATE_NOOP("Errors", "name somebody who has one, or set one first")},
    {ErrorCode::PinNotAsSet,
     QT_TRANSLATE_NOOP("Errors", "what this file keeps of the PIN of %1 was changed since it was set"),
     QT_TRANSLATE_NOOP("Errors",
                       "have another gear officer set a new one, and look at the file with `verify`")},
    {ErrorCode::NotGearOfficer, QT_TRANSLATE_NOOP("Errors", "%1 is not a gear officer here today"),
     QT_TRANSLATE_NOOP("Errors", "give the PIN of a gear officer")},
    {ErrorCode::PinSetAlready, QT_TRANSLATE_NOOP("Errors", "%1 has a PIN already"),
     QT_TRANSLATE_NOOP("Errors", "give that one, too; when it is lost: `tholepinctl pin reset`")},
    {ErrorCode::OtherOfficerHasPin, QT_TRANSLATE_NOOP("Errors", "%1 has a PIN and can set a new one for %2"),
     QT_TRANSLATE_NOOP("Errors", "ask that gear officer")},
    {ErrorCode::NotFileOwner, QT_TRANSLATE_NOOP("Errors", "the file is another user's of this computer"),
     QT_TRANSLATE_NOOP("Errors", "have the owner of the file do it")},
    {ErrorCode::SignatureNeedsPin,
     QT_TRANSLATE_NOOP("Errors", "this club asks for the PIN of whoever signs, and %1 has one"),
     QT_TRANSLATE_NOOP("Errors", "give it, or have somebody sign who has none")},
};

static_assert(isWhole(textsOfPins, ErrorCode::PinNeeded, ErrorCode::QuantityNegative),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> pinTexts() {
    return textsOfPins;
}

} // namespace app
