#include "app/gui/widgets/reason_words.h"

#include "core/base/error_code.h"
#include "core/tag/reason.h"

#include "app/text/errors.h"
#include "app/text/words.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ReasonText {
    Q_DECLARE_TR_FUNCTIONS(Reason)
};

} // namespace

QString wantingOfReason(const QString& typed) {
    const auto good = core::reasonFrom(typed.trimmed().toStdString());
    if (good) return {};
    switch (good.error().code) {
    case core::ErrorCode::ReasonIsTag:
        return ReasonText::tr("That is a tag's code. Say it in words.");
    case core::ErrorCode::ReasonTooShort:
        return ReasonText::tr("Say it in words: at least three letters.");
    default:
        return withCapital(errorInWords(good.error())) + QLatin1Char('.');
    }
}

} // namespace app
