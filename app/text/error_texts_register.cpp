#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Names and codes that are looked up, and what is done with items of kit.
constexpr ErrorText textsOfRegister[] = {
    {ErrorCode::NoBoats, QT_TRANSLATE_NOOP("Errors", "there is no boat '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "import boats first")},
    {ErrorCode::NoSuchBoat, QT_TRANSLATE_NOOP("Errors", "there is no boat '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "the club's boats are: %2")},
    {ErrorCode::NoSuchBoatClass, QT_TRANSLATE_NOOP("Errors", "there is no class of boat '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "name a class as it stands in boats.csv")},
    {ErrorCode::NoPlaces, QT_TRANSLATE_NOOP("Errors", "there is no place '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "import places first")},
    {ErrorCode::NoSuchPlace, QT_TRANSLATE_NOOP("Errors", "there is no place '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "the club's places are: %2")},
    {ErrorCode::NoSuchHomePlace, QT_TRANSLATE_NOOP("Errors", "there is no place '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "name a place as it stands in places.csv")},
    {ErrorCode::NoSuchPerson, QT_TRANSLATE_NOOP("Errors", "there is no '%1' among the club's people"),
     QT_TRANSLATE_NOOP("Errors", "give a name as it stands in people.csv")},
    {ErrorCode::NoSuchKeeper, QT_TRANSLATE_NOOP("Errors", "there is no '%1' among the club's people"),
     QT_TRANSLATE_NOOP("Errors", "name a person as people.csv has them")},
    {ErrorCode::NoSuchMeasured, QT_TRANSLATE_NOOP("Errors", "no person '%1'"),
     QT_TRANSLATE_NOOP("Errors", "correct the name")},
    {ErrorCode::NoSuchKitType, QT_TRANSLATE_NOOP("Errors", "there is no kit type '%1' in this club"),
     QT_TRANSLATE_NOOP("Errors", "name a kit type as it stands in kit_types.csv")},
    {ErrorCode::NoSuchSize, QT_TRANSLATE_NOOP("Errors", "%1 has no size '%2'"),
     QT_TRANSLATE_NOOP("Errors", "name a size as it stands in sizes.csv")},
    {ErrorCode::NoSuchRule, QT_TRANSLATE_NOOP("Errors", "no kit type of this club has a rule '%1'"),
     QT_TRANSLATE_NOOP("Errors", "name a rule as it stands in life_rules.csv")},
    {ErrorCode::NoSuchItem, QT_TRANSLATE_NOOP("Errors", "no item of this club has the tag %1"),
     QT_TRANSLATE_NOOP("Errors", "give a tag code of the register")},
    {ErrorCode::NothingHasTag,
     QT_TRANSLATE_NOOP("Errors", "no item, boat or person of this club has the tag %1"),
     QT_TRANSLATE_NOOP("Errors", "look the code up in the register")},
    {ErrorCode::NoSuchSubject,
     QT_TRANSLATE_NOOP("Errors", "'%1' is no tag code, boat or person of this club"),
     QT_TRANSLATE_NOOP("Errors", "give a tag code, a boat's name or a person's name as the register has it")},
    {ErrorCode::NoSuchRow, QT_TRANSLATE_NOOP("Errors", "there is no '%2' in %1"),
     QT_TRANSLATE_NOOP("Errors", "give the row's name as the register has it")},
    {ErrorCode::RowLikeOthers, QT_TRANSLATE_NOOP("Errors", "there is no '%2' in %1"),
     QT_TRANSLATE_NOOP("Errors", "it may be %3")},
    {ErrorCode::RowAmbiguous, QT_TRANSLATE_NOOP("Errors", "'%1' may be more than one row"),
     QT_TRANSLATE_NOOP("Errors", "say which: %2")},
    {ErrorCode::RowThere, QT_TRANSLATE_NOOP("Errors", "'%1' is there already"),
     QT_TRANSLATE_NOOP("Errors", "change it, or give the new one another name")},
    {ErrorCode::RowChanged, QT_TRANSLATE_NOOP("Errors", "'%1' was changed meanwhile"),
     QT_TRANSLATE_NOOP("Errors", "look at it again, then save it")},
    {ErrorCode::KeyCellFixed,
     QT_TRANSLATE_NOOP("Errors", "%1 is what '%2' is known by, and cannot be changed like a cell"),
     QT_TRANSLATE_NOOP("Errors", "rename it, or write a new row")},
    {ErrorCode::NothingSoNamed, QT_TRANSLATE_NOOP("Errors", "no %1 of this club is called '%2'"),
     QT_TRANSLATE_NOOP("Errors", "give the name as the register has it")},
    {ErrorCode::NameMissing, QT_TRANSLATE_NOOP("Errors", "the new name is empty"),
     QT_TRANSLATE_NOOP("Errors", "say how it is to be called")},
    {ErrorCode::NameTaken, QT_TRANSLATE_NOOP("Errors", "another one is called '%1'"),
     QT_TRANSLATE_NOOP("Errors", "take a name that nothing else has")},
    {ErrorCode::NameOfOld, QT_TRANSLATE_NOOP("Errors", "'%1' is an old name of '%2'"),
     QT_TRANSLATE_NOOP("Errors", "take the name of now, or one that nothing had")},
    {ErrorCode::KitDayUnreadable, QT_TRANSLATE_NOOP("Errors", "'%1' is no day"),
     QT_TRANSLATE_NOOP("Errors", "write it like 2026-03-14, 2026-03 or 2026")},
    {ErrorCode::MadeInFuture, QT_TRANSLATE_NOOP("Errors", "the day it was made, %1, is still to come"),
     QT_TRANSLATE_NOOP("Errors", "give the day on its label")},
    {ErrorCode::FirstUseInFuture,
     QT_TRANSLATE_NOOP("Errors", "the day of its first use, %1, is still to come"),
     QT_TRANSLATE_NOOP("Errors", "leave it out until it is used")},
    {ErrorCode::UsedBeforeMade, QT_TRANSLATE_NOOP("Errors", "it was first used %1, before it was made %2"),
     QT_TRANSLATE_NOOP("Errors", "give the days on its label")},
    {ErrorCode::SerialTwice, QT_TRANSLATE_NOOP("Errors", "serial %1 stands twice among the labels"),
     QT_TRANSLATE_NOOP("Errors", "take one of them out of the list")},
    {ErrorCode::TwoHomes, QT_TRANSLATE_NOOP("Errors", "kit has its home on a boat or at a place, not both"),
     QT_TRANSLATE_NOOP("Errors", "give one of the two")},
    {ErrorCode::ItemCountOutOfRange,
     QT_TRANSLATE_NOOP("Errors", "from 1 to 1000 items are registered at once"),
     QT_TRANSLATE_NOOP("Errors", "give another number")},
    {ErrorCode::LabelWithoutSerial,
     QT_TRANSLATE_NOOP("Errors", "the label %1 has no serial number, so it names no single item"),
     QT_TRANSLATE_NOOP("Errors", "register it by number instead")},
    {ErrorCode::SerialRegistered, QT_TRANSLATE_NOOP("Errors", "serial %1 is registered already as %2"),
     QT_TRANSLATE_NOOP("Errors", "take it out of the list")},
    {ErrorCode::TagForWrittenOff, QT_TRANSLATE_NOOP("Errors", "%1 %2 is written off"),
     QT_TRANSLATE_NOOP("Errors", "fix no new tag to it: it counts nowhere any more")},
    {ErrorCode::NotAReason, QT_TRANSLATE_NOOP("Errors", "'%1' is not possible as a reason"),
     QT_TRANSLATE_NOOP("Errors", "say lost, damaged, worn or expired")},
    {ErrorCode::WrittenOffAlready, QT_TRANSLATE_NOOP("Errors", "it is written off already"),
     QT_TRANSLATE_NOOP("Errors", "nothing is left to do")},
    {ErrorCode::NotUnserviceable, QT_TRANSLATE_NOOP("Errors", "only an unserviceable item is released"),
     QT_TRANSLATE_NOOP("Errors", "look at its history")},
    {ErrorCode::NotWrittenOff, QT_TRANSLATE_NOOP("Errors", "only a written-off item is reinstated"),
     QT_TRANSLATE_NOOP("Errors", "look at its history")},
};

static_assert(isWhole(textsOfRegister, ErrorCode::NoBoats, ErrorCode::NoSuchCheck),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> registerTexts() {
    return textsOfRegister;
}

} // namespace app
