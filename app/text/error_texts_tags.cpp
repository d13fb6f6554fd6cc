#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// Tag codes and makers' labels.
constexpr ErrorText textsOfTags[] = {
    {ErrorCode::TagLength, QT_TRANSLATE_NOOP("Errors", "'%1' has %2 characters where a tag code has 10"),
     QT_TRANSLATE_NOOP("Errors", "type the ten characters under the tag")},
    {ErrorCode::TagClassUnknown, QT_TRANSLATE_NOOP("Errors", "'%1' does not begin with K, B, P, C or S"),
     QT_TRANSLATE_NOOP("Errors", "type the ten characters under the tag")},
    {ErrorCode::TagCharacter, QT_TRANSLATE_NOOP("Errors", "'%1' holds a character that no tag code has"),
     QT_TRANSLATE_NOOP("Errors", "type the ten characters under the tag")},
    {ErrorCode::TagCheckCharacter, QT_TRANSLATE_NOOP("Errors", "'%1' fails its check character"),
     QT_TRANSLATE_NOOP("Errors",
                       "one character is probably wrong: compare it with the ten characters under the tag")},
    {ErrorCode::TagLikeOthers, QT_TRANSLATE_NOOP("Errors", "'%1' is no tag of this club"),
     QT_TRANSLATE_NOOP("Errors", "it is almost %2: compare it with the characters under the tag")},
    {ErrorCode::LabelEmpty, QT_TRANSLATE_NOOP("Errors", "the label holds no element"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelElementUnknown, QT_TRANSLATE_NOOP("Errors", "'%1' begins no element that is known here"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelBracketOpen, QT_TRANSLATE_NOOP("Errors", "a bracket of the label is not closed"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelIdentifierUnknown,
     QT_TRANSLATE_NOOP("Errors", "'(%1)' is no element that is known here"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelContradiction, QT_TRANSLATE_NOOP("Errors", "the label says two things for element (%1)"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelLength,
     QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its length is wrong in '%2'"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelCharacter,
     QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its character is wrong in '%2'"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelCheckDigit,
     QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its check digit is wrong in '%2'"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelMonth,
     QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its month is wrong in '%2'"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelDay, QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its day is wrong in '%2'"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
    {ErrorCode::LabelFirstDigit,
     QT_TRANSLATE_NOOP("Errors", "element (%1) of the label: its first digit is wrong in '%2'"),
     QT_TRANSLATE_NOOP("Errors", "compare the text beneath the maker's symbol, or type the tag code")},
};

static_assert(isWhole(textsOfTags, ErrorCode::TagLength, ErrorCode::ImportNotAFile),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> tagTexts() {
    return textsOfTags;
}

} // namespace app
