#include "app/gui/camera/scan_words.h"

#include "app/gui/widgets/list_row.h"
#include "app/text/act_words.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/base/error_code.h"
#include "core/tag/tag_code.h"

#include <QCoreApplication>

namespace app {
namespace {

struct ScanWordsText {
    Q_DECLARE_TR_FUNCTIONS(ScanWords)
};

ScanWords ofNewItem(const core::Scanned& scan, const ListRow* row) {
    if (!row) return {{}, false, Sound::LookAtThis};
    if (row->mark == Mark::Found)
        return {ScanWordsText::tr("Found: %1.").arg(withCode(scan)), false, Sound::NewAndFine};
    return {ScanWordsText::tr("Look: %1. %2").arg(withCode(scan), row->remark), true, Sound::LookAtThis};
}

ScanWords ofUnread(const core::Scanned& scan, const QString& read) {
    if (!scan.alike.empty())
        return {errorSentence(errorOfAlike(read.toStdString(), scan.alike)), true, Sound::LookAtThis};
    if (!scan.name.empty())
        return {ScanWordsText::tr("%1 is no longer here, and is not named.").arg(text(scan.name)), true,
                Sound::LookAtThis};
    const auto typed = core::TagCode::parse(read.toStdString());
    const QString said = typed ? ScanWordsText::tr("%1 is no tag for this check.").arg(text(read))
                               : errorSentence(typed.error());
    return {said, true, Sound::LookAtThis};
}

} // namespace

QString withCode(const core::Scanned& scan) {
    return QStringLiteral("%1 %2").arg(text(scan.name), codeInWords(scan.item.tag));
}

ScanWords wordsOf(const core::Scanned& scan, const QString& text, const ListRow* row) {
    using What = core::Scanned::What;
    switch (scan.what) {
    case What::NewItem:
        return ofNewItem(scan, row);
    case What::SeenBefore:
        return {ScanWordsText::tr("%1 was seen before; it counts once.").arg(withCode(scan)), false,
                std::nullopt};
    case What::UnknownTag:
        return {ScanWordsText::tr("%1 is not in the register. It does not count.")
                    .arg(codeInWords(scan.item.tag)),
                true, Sound::LookAtThis};
    case What::PersonNamed:
        return {ScanWordsText::tr("%1 is aboard.").arg(app::text(scan.name)), false, Sound::NewAndFine};
    case What::Ignored:
        return {ScanWordsText::tr("Nothing to do for that tag here."), false, std::nullopt};
    case What::Unread:
        return ofUnread(scan, text);
    case What::Control:
        break;
    }
    return {};
}

ScanWords wordsOf(const FlowStep& step) {
    using What = FlowStep::What;
    switch (step.what) {
    case What::TookBack:
        return {undoneInWords(*step.undone), false, {}};
    case What::NothingToWithdraw:
        if (step.why) break;
        return {ScanWordsText::tr("Scan the damaged thing first, then the tag for damage."), true, {}};
    case What::Happened:
        return {step.isNews ? ScanWordsText::tr("Recorded for today: %1, of %2.")
                                  .arg(text(step.name), codeInWords(step.scan.item.tag))
                            : ScanWordsText::tr("Recorded for today already: %1, of %2.")
                                  .arg(text(step.name), codeInWords(step.scan.item.tag)),
                false,
                {}};
    case What::NoTimedPoint:
        return {ScanWordsText::tr("No timed point is open."), false, {}};
    case What::SignatureAsked:
        return {ScanWordsText::tr("Show the tag again to sign, or first the tag of who signs."), false, {}};
    case What::SignerNamed:
        return {
            ScanWordsText::tr("%1 signs. Show the tag for finishing again.").arg(text(step.name)), false, {}};
    case What::SignerUnknown:
        if (step.why) break;
        return {ScanWordsText::tr("That tag belongs to nobody in this club."), true, {}};
    case What::SignatureGiven:
        return {ScanWordsText::tr("Say first who signs and, where kit is incomplete, why."), true, {}};
    default:
        break;
    }
    if (step.why) return {errorSentence(*step.why), true, {}};
    return {};
}

} // namespace app
