#include "app/text/cautions.h"
#include "app/text/text.h"

#include "core/check/boat_check.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace app {
namespace {

struct CautionsText {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

bool isOfEngine(const QString& name) {
    // As points are named in the languages of this program.
    static constexpr std::array words{"engine", "motor", "outboard"};
    return std::any_of(words.begin(), words.end(), [&](const char* word) {
        return name.contains(QLatin1String(word), Qt::CaseInsensitive);
    });
}

} // namespace

QString launchCaution() {
    return CautionsText::tr(
        "Complete kit is not permission to launch: it does not show that boat, engine, crew or sea are fit.");
}

QString boardCaution() {
    return CautionsText::tr("Kit, and the points of the last check, are all that is known here.") +
           QLatin1Char(' ') + launchCaution();
}

QString scanCaution() {
    return CautionsText::tr(
        "A scan shows that the tag was seen, not that the thing works: look at each thing and try it.");
}

QString fitCaution() {
    return CautionsText::tr("Sizes are a guide: the label on the jacket and a fit test decide.");
}

QString pressureCaution() {
    return CautionsText::tr(
        "The pressure afloat is a first estimate for a fixed volume: measure again on the water.");
}

bool hasPressureAfloat(const core::CheckAnswer& answer) {
    return std::any_of(answer.points.begin(), answer.points.end(),
                       [](const core::PointAnswer& point) { return point.afloat.has_value(); });
}

QString jacketCaution() {
    return CautionsText::tr("Nobody goes afloat without a life jacket that fits.");
}

QString engineCaution() {
    return CautionsText::tr(
        "Engine run: propeller guard on, kill cord on, water to the intake, nobody near.");
}

bool isEngineRun(const core::BoatPoint& point) {
    return point.kind == core::PointKind::Timed && isOfEngine(text(point.name));
}

QStringList checkCautions(const core::CheckAnswer& answer) {
    const bool isLaunch = answer.phase == core::Phase::Launch;
    QStringList cautions;
    if (isLaunch) cautions << launchCaution();
    cautions << scanCaution();
    if (isLaunch && answer.outcome == core::CheckOutcome::Incomplete) cautions << jacketCaution();
    if (isLaunch) cautions << fitCaution();
    if (hasPressureAfloat(answer)) cautions << pressureCaution();
    if (std::any_of(answer.points.begin(), answer.points.end(),
                    [](const core::PointAnswer& each) { return isEngineRun(each.point); }))
        cautions << engineCaution();
    return cautions << whoPrevails();
}

QString makeReadyCaution() {
    return CautionsText::tr(
        "The plan goes by the register and by where tags were seen last. It does not know sizes, nor whose "
        "kit it is, and an open log entry does not hold an item back: check each boat when its kit is "
        "aboard.");
}

QString serviceCaution() {
    return CautionsText::tr("Service and release only by whoever the maker's manual and local rules allow, "
                            "often a workshop.");
}

QString rearmCaution() {
    return CautionsText::tr("Rearm with a new cylinder and a new auto-inflator, never with used ones; the "
                            "maker's manual says which.");
}

bool isRearm(const QString& rule) {
    return rule.contains(QLatin1String("rearm"), Qt::CaseInsensitive) ||
           rule.contains(QLatin1String("re-arm"), Qt::CaseInsensitive);
}

QString toleranceCaution() {
    return CautionsText::tr("Of rules with a tolerance, or that let kit without a date count: the maker and "
                            "local rules may not allow it.");
}

QString lastingCaution() {
    return CautionsText::tr("That kit lasts longer here than its rule allows is no reason to lengthen the "
                            "rule.");
}

QString dueCaution() {
    return CautionsText::tr("Where a day printed on the thing and a rule differ, the earlier day holds.");
}

QString tagCaution() {
    return CautionsText::tr(
        "Fix no tag where it hides a label, a seam, a valve or a moving part, or where glue harms the "
        "material: "
        "the maker's instructions prevail.");
}

QString writeOffCaution() {
    return CautionsText::tr(
        "Destroy its tag, now or when it turns up. Flares, cylinders and extinguishers go to whoever takes "
        "them by local rule.");
}

QString reinstatedCaution() {
    return CautionsText::tr(
        "Look at it before it goes aboard, and give it a new tag if its old one was destroyed.");
}

QString whoPrevails() {
    return CautionsText::tr("The maker's instructions, local rules and the person in charge prevail.");
}

} // namespace app
