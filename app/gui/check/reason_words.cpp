#include "app/gui/check/reason_words.h"

#include "core/tag/tag_code.h"

#include <QCoreApplication>

#include <algorithm>

namespace app {
namespace {

struct ReasonText {
    Q_DECLARE_TR_FUNCTIONS(Reason)
};

constexpr int leastLetters = 3;

/// As printed, or as a person types it. Ten letters of a sentence may agree with a check character by chance,
/// so what is not as printed must have a digit.
bool isTagCode(const QString& typed) {
    const std::string text = typed.trimmed().toStdString();
    const bool hasDigit = std::any_of(typed.begin(), typed.end(), [](QChar each) { return each.isDigit(); });
    return core::TagCode::exact(text) || (hasDigit && core::TagCode::parse(text));
}

} // namespace

QString wantingOfReason(const QString& typed) {
    if (isTagCode(typed)) return ReasonText::tr("That is a tag's code. Say it in words.");
    const auto letters = typed.toUcs4();
    const auto count =
        std::count_if(letters.begin(), letters.end(), [](uint letter) { return QChar::isLetter(letter); });
    return count < leastLetters ? ReasonText::tr("Say it in words: at least three letters.") : QString();
}

} // namespace app
