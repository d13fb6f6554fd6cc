#include "tests/app/text/error_cases.h"

namespace app {

using core::ErrorCode;
using core::ErrorKind;

// Of PINs, and who may do what.
const std::vector<ErrorCase> pinCases{
    {{ErrorCode::PinNeeded, {"Bram Oke, Ada Lee"}},
     ErrorKind::NotAllowed,
     "this is a gear officer's to do, and needs the PIN of Bram Oke, Ada Lee",
     "give the PIN in the page, or on the command line with --by and --pin-file"},
    {{ErrorCode::PinWrong, {"Bram Oke"}},
     ErrorKind::NotAllowed,
     "this is not the PIN of Bram Oke",
     "give it again; after five wrong ones there is a wait"},
    {{ErrorCode::PinWait, {"30", "Bram Oke"}},
     ErrorKind::NotAllowed,
     "after several wrong PINs for Bram Oke the next one has to wait for 30 seconds",
     "give it then"},
    {{ErrorCode::PinLength},
     ErrorKind::BadInput,
     "a PIN has 4 to 12 characters",
     "choose digits, letters or both, without blanks at the ends"},
    {{ErrorCode::PinUnseen},
     ErrorKind::BadInput,
     "the PIN holds a character that cannot be seen",
     "type it anew"},
    {{ErrorCode::NoPinSet, {"Bram Oke"}},
     ErrorKind::NotFound,
     "Bram Oke has no PIN",
     "name somebody who has one, or set one first"},
    {{ErrorCode::PinNotAsSet, {"Bram Oke"}},
     ErrorKind::FileDamaged,
     "what this file keeps of the PIN of Bram Oke was changed since it was set",
     "have another gear officer set a new one, and look at the file with `verify`"},
    {{ErrorCode::NotGearOfficer, {"Bram Oke"}},
     ErrorKind::NotAllowed,
     "Bram Oke is not a gear officer here today",
     "give the PIN of a gear officer"},
    {{ErrorCode::PinSetAlready, {"Bram Oke"}},
     ErrorKind::NotAllowed,
     "Bram Oke has a PIN already",
     "give that one, too; when it is lost: `tholepinctl pin reset`"},
    {{ErrorCode::OtherOfficerHasPin, {"Ada Lee", "Bram Oke"}},
     ErrorKind::NotAllowed,
     "Ada Lee has a PIN and can set a new one for Bram Oke",
     "ask that gear officer"},
    {{ErrorCode::NotFileOwner},
     ErrorKind::NotAllowed,
     "the file is another user's of this computer",
     "have the owner of the file do it"},
    {{ErrorCode::SignatureNeedsPin, {"Bram Oke"}},
     ErrorKind::NotAllowed,
     "this club asks for the PIN of whoever signs, and Bram Oke has one",
     "give it, or have somebody sign who has none"},
};

} // namespace app
