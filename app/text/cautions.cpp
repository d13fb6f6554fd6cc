#include "app/text/cautions.h"

#include <QCoreApplication>

namespace app {
namespace {

struct CautionsText {
    Q_DECLARE_TR_FUNCTIONS(Cautions)
};

} // namespace

QString launchCaution() {
    return CautionsText::tr(
        "Complete kit is not permission to launch: it does not show that boat, engine, crew or sea are fit.");
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

QString dueCaution() {
    return CautionsText::tr("A date printed on the thing prevails over one that was computed.");
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

QString whoPrevails() {
    return CautionsText::tr("The maker's instructions, local rules and the person in charge prevail.");
}

} // namespace app
