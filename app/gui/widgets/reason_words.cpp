#include "app/gui/widgets/reason_words.h"

#include "core/base/error_code.h"
#include "core/tag/reason.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ReasonText {
    Q_DECLARE_TR_FUNCTIONS(Reason)
};

} // namespace

QString wantingOfReason(const QString& typed) {
    const core::Outcome good = core::checkReason(typed.trimmed().toStdString());
    if (good) return {};
    return good.error().code == core::ErrorCode::ReasonIsTag
               ? ReasonText::tr("That is a tag's code. Say it in words.")
               : ReasonText::tr("Say it in words: at least three letters.");
}

} // namespace app
