#include "app/gui/help/field_sentences.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QLineEdit>
#include <QWidget>

#include <algorithm>
#include <iterator>

namespace app {
namespace {

struct FieldSentence {
    const char* field; ///< its object name, without a number at its end; or the end of it
    const char* sentence;
};

/// By name, as their bytes are ordered.
constexpr FieldSentence sentences[] = {
    {"ReasonBox", QT_TRANSLATE_NOOP("FieldSentences", "Why it is written off; it stands in the record.")},
    {"ReasonEdit", QT_TRANSLATE_NOOP("FieldSentences", "One sentence on why; it stands in the record.")},
    {"arrivalCountBox", QT_TRANSLATE_NOOP("FieldSentences", "How many pieces arrived.")},
    {"arrivalMadeEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day or month of manufacture, if it is known.")},
    {"arrivalPlaceBox", QT_TRANSLATE_NOOP("FieldSentences", "Where the pieces are put.")},
    {"arrivalStampedEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day that is stamped on the pieces, if there is one.")},
    {"benchByBox", QT_TRANSLATE_NOOP("FieldSentences", "Who did the work that is recorded.")},
    {"benchDayEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day on which the work was done, as in 2026-03-14.")},
    {"benchNoteEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "What else is to be known of the work; may stay empty.")},
    {"benchRuleBox",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "The inspection or service that is recorded for all items in the list.")},
    {"boatFilterEdit",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "Shows only boats whose strip has these letters; a tag's code opens its boat.")},
    {"closingEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "One sentence on what was done; the entry is closed with it.")},
    {"clubFileEdit", QT_TRANSLATE_NOOP("FieldSentences", "The file that is made for the new club.")},
    {"clubFolderEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The folder whose CSV files the new club begins with.")},
    {"clubNameEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The new club's name, as it stands on every sheet.")},
    {"codeEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The code on a tag, with or without gaps; Enter takes it.")},
    {"crewBox", QT_TRANSLATE_NOOP("FieldSentences", "Who is aboard besides the driver; one box for each.")},
    {"damageEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "One sentence on what is damaged; the thing is withdrawn with it.")},
    {"driverBox", QT_TRANSLATE_NOOP("FieldSentences", "Who drives the boat on this trip.")},
    {"dueKitTypeBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Shows what falls due of one type of kit, or of all.")},
    {"dueSizeBox", QT_TRANSLATE_NOOP("FieldSentences", "Shows what falls due of one size, or of all.")},
    {"endDayEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The last day on which it belongs to the club, as in 2026-03-14.")},
    {"eventBox", QT_TRANSLATE_NOOP("FieldSentences", "The event whose checks are shown.")},
    {"eventEdit", QT_TRANSLATE_NOOP("FieldSentences", "The event that the check is filed under.")},
    {"evidenceBoatBox", QT_TRANSLATE_NOOP("FieldSentences", "The boat whose evidence is looked up.")},
    {"evidenceWhenEdit",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "The day, and if wanted the time, that is asked about, as in 2026-03-14 06:00.")},
    {"filedCheckBox",
     QT_TRANSLATE_NOOP("FieldSentences", "The check that is to be filed under another event.")},
    {"fitOutCountBox", QT_TRANSLATE_NOOP("FieldSentences", "How many such pieces are written at once.")},
    {"fitOutFirstUseEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day on which it was first used, if it is known.")},
    {"fitOutHomeBox", QT_TRANSLATE_NOOP("FieldSentences", "The boat or place where the piece belongs.")},
    {"fitOutMadeEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day or month of manufacture, if it is known.")},
    {"fitOutPersonBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Whose own it is; empty for what belongs to the boat.")},
    {"fitOutSerialEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The serial number that the maker gave it, if there is one.")},
    {"fitOutSizeBox", QT_TRANSLATE_NOOP("FieldSentences", "The size that is printed on it.")},
    {"fitOutStampedEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day that is stamped on it, if there is one.")},
    {"foundCodeEdit",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "The code on the tag of what turned up; Enter records that it is found.")},
    {"foundStocktakeBox",
     QT_TRANSLATE_NOOP("FieldSentences", "The stocktake that what turned up is written into.")},
    {"historyCodeEdit", QT_TRANSLATE_NOOP("FieldSentences", "The code on a tag whose history is shown.")},
    {"historyNameBox",
     QT_TRANSLATE_NOOP("FieldSentences", "The boat, person or place whose history is shown.")},
    {"hubUrlEdit", QT_TRANSLATE_NOOP("FieldSentences",
                                     "Where the district's server is, as it was told by whoever runs it.")},
    {"kitHomeBox", QT_TRANSLATE_NOOP("FieldSentences", "Shows kit of one boat or place, or of all.")},
    {"kitOrderBox", QT_TRANSLATE_NOOP("FieldSentences", "The order in which the kit is listed.")},
    {"kitSearchEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "Finds kit by any of its words or by the code on its tag.")},
    {"kitSeveralActBox", QT_TRANSLATE_NOOP("FieldSentences", "What is done with all items that are ticked.")},
    {"kitSeveralNameBox",
     QT_TRANSLATE_NOOP("FieldSentences", "The boat, place or person that the ticked items go to.")},
    {"kitSeveralWhyBox", QT_TRANSLATE_NOOP("FieldSentences", "Why the ticked items are written off.")},
    {"kitStateBox", QT_TRANSLATE_NOOP("FieldSentences", "Shows kit of one state, or of all.")},
    {"kitTypeBox", QT_TRANSLATE_NOOP("FieldSentences", "Shows kit of one type, or of all.")},
    {"logAboutBox", QT_TRANSLATE_NOOP("FieldSentences", "The boat that the entry is about.")},
    {"logCodeEdit", QT_TRANSLATE_NOOP("FieldSentences",
                                      "The code on the tag of the thing that it is about; may stay empty.")},
    {"logSeverityBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Whether the entry stops the boat until it is closed.")},
    {"logTextEdit", QT_TRANSLATE_NOOP("FieldSentences", "One sentence on what is the matter.")},
    {"manifestKitTypeBox", QT_TRANSLATE_NOOP("FieldSentences", "The type of kit that is asked for.")},
    {"manifestNoteEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "What a crew should know of this line; may stay empty.")},
    {"manifestNumberBox", QT_TRANSLATE_NOOP("FieldSentences", "How many of it the boat must carry.")},
    {"manifestOwnerBox", QT_TRANSLATE_NOOP("FieldSentences", "The class or boat whose list is shown.")},
    {"manifestPointHighEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The highest value that is allowed; empty: no bound.")},
    {"manifestPointKindBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Whether the point is looked at, measured or timed.")},
    {"manifestPointLowEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The lowest value that is allowed; empty: no bound.")},
    {"manifestPointNameEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "What is looked at or measured, in a few words.")},
    {"manifestPointNoteEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "What a crew should know of this point; may stay empty.")},
    {"manifestPointPhaseBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Whether it is asked before launching or after coming back.")},
    {"manifestPointUnitEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The unit of what is measured, as in kPa.")},
    {"newCountBox",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "How many such pieces are written at once, each with a tag of its own.")},
    {"networkAddress",
     QT_TRANSLATE_NOOP("FieldSentences", "Where the camera on the network is found, as its maker says.")},
    {"networkPassword",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "The camera's password; it is kept nowhere, and asked for each time.")},
    {"networkUser",
     QT_TRANSLATE_NOOP("FieldSentences", "The camera's user name; empty if it asks for none.")},
    {"newFirstUseEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day on which it was first used, if it is known.")},
    {"newHomeBox", QT_TRANSLATE_NOOP("FieldSentences", "The boat or place where the piece belongs.")},
    {"newKitTypeBox", QT_TRANSLATE_NOOP("FieldSentences", "The type of the new kit, from the register.")},
    {"newLabelEdit",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "The maker's label, scanned or typed; serial and lot are taken from it.")},
    {"newMadeEdit", QT_TRANSLATE_NOOP("FieldSentences", "The day or month of manufacture, if it is known.")},
    {"newMakerEdit", QT_TRANSLATE_NOOP("FieldSentences", "The maker and the model, as they stand on it.")},
    {"newNoteEdit", QT_TRANSLATE_NOOP("FieldSentences", "What else is to be known of it; may stay empty.")},
    {"newPersonBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Whose own it is; empty for what belongs to the boat.")},
    {"newSizeBox", QT_TRANSLATE_NOOP("FieldSentences", "The size that is printed on it.")},
    {"newStampedEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The day that is stamped on it, if there is one.")},
    {"officerBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Whose name stands in the record for what is done on these pages.")},
    {"otherEventBox",
     QT_TRANSLATE_NOOP("FieldSentences", "The event that the check is filed under instead.")},
    {"otherEventEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The event that the check is filed under instead.")},
    {"pinAgainEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The new PIN once more, so that no slip of a finger is kept.")},
    {"pinNewEdit", QT_TRANSLATE_NOOP("FieldSentences", "The new PIN; it is not shown while it is typed.")},
    {"pinOwnEdit", QT_TRANSLATE_NOOP("FieldSentences", "The PIN that holds until now.")},
    {"readyCodeEdit",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "The code on the tag of what was carried; Enter ticks its move off.")},
    {"readyPlaceBox", QT_TRANSLATE_NOOP("FieldSentences", "The place whose kit may be used.")},
    {"registerSearchEdit", QT_TRANSLATE_NOOP("FieldSentences", "Shows only rows that have all these words.")},
    {"registerSheetBox",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "Which rows of the register are shown: boats, people, places or types of kit.")},
    {"renameNameEdit", QT_TRANSLATE_NOOP("FieldSentences", "The name that holds from now on, everywhere.")},
    {"renameWhatBox", QT_TRANSLATE_NOOP("FieldSentences", "Which of its names is changed.")},
    {"replaceConfidenceBox",
     QT_TRANSLATE_NOOP("FieldSentences", "How sure the plan shall be that no kit runs short.")},
    {"replaceMonthsBox", QT_TRANSLATE_NOOP("FieldSentences", "For how many months from today is planned.")},
    {"serviceRecordBox",
     QT_TRANSLATE_NOOP("FieldSentences", "Which inspection or service of it is recorded.")},
    {"signedByBox", QT_TRANSLATE_NOOP("FieldSentences", "Who signs the check.")},
    {"spreadsheetKindBox", QT_TRANSLATE_NOOP("FieldSentences", "What one row of the table stands for.")},
    {"spreadsheetSheetBox", QT_TRANSLATE_NOOP("FieldSentences", "Which sheet of the workbook is read.")},
    {"stocktakeByBox", QT_TRANSLATE_NOOP("FieldSentences", "Who signs the stocktake.")},
    {"stocktakeNumberEdit",
     QT_TRANSLATE_NOOP(
         "FieldSentences",
         "The number of items that will be missing, as it is told above, before the stocktake is signed.")},
    {"stocktakePlaceBox", QT_TRANSLATE_NOOP("FieldSentences", "The place whose kit is counted.")},
    {"tagsHomeBox", QT_TRANSLATE_NOOP("FieldSentences", "Tags of one boat or place, or of all.")},
    {"tagsKitTypeBox", QT_TRANSLATE_NOOP("FieldSentences", "Tags of one type of kit, or of all.")},
    {"tagsPaperBox", QT_TRANSLATE_NOOP("FieldSentences", "The paper that the tags are printed on.")},
    {"tagsSizeBox", QT_TRANSLATE_NOOP("FieldSentences", "How wide each symbol is printed.")},
    {"todaysEventBox", QT_TRANSLATE_NOOP("FieldSentences", "The event that every check opened today is of.")},
    {"todaysEventEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The event that every check opened today is of.")},
    {"tripBackEdit", QT_TRANSLATE_NOOP("FieldSentences", "When the boat was back, as in 09:40.")},
    {"tripFuelEdit", QT_TRANSLATE_NOOP("FieldSentences", "How much fuel was used or filled in, in words.")},
    {"tripHoursEdit", QT_TRANSLATE_NOOP("FieldSentences", "How many hours the engine ran.")},
    {"tripIncidentsEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "What happened on the trip, in a sentence or two.")},
    {"tripLaunchesEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "How often the boat was launched on this trip.")},
    {"tripLeftEdit", QT_TRANSLATE_NOOP("FieldSentences", "When the boat left, as in 07:12.")},
    {"unlockPinEdit",
     QT_TRANSLATE_NOOP("FieldSentences", "The PIN of whoever is chosen; it is not shown while it is typed.")},
    {"unlockWhoBox", QT_TRANSLATE_NOOP("FieldSentences", "Whose PIN is given.")},
    {"urgentReasonEdit",
     QT_TRANSLATE_NOOP("FieldSentences",
                       "Why the boat goes out although kit is missing; it stands in the record.")},
};

const char* sentenceOf(QString field) {
    while (!field.isEmpty() && field.back().isDigit())
        field.chop(1);
    const FieldSentence* ofEnd = nullptr;
    for (const FieldSentence& each : sentences) {
        if (field == QLatin1String(each.field)) return each.sentence;
        if (field.endsWith(QLatin1String(each.field))) ofEnd = &each;
    }
    return ofEnd ? ofEnd->sentence : nullptr;
}

template <class Field>
void describe(const QWidget& page) {
    for (auto* field : page.findChildren<Field*>())
        if (field->accessibleDescription().isEmpty())
            if (const char* sentence = sentenceOf(field->objectName()))
                field->setAccessibleDescription(QCoreApplication::translate("FieldSentences", sentence));
}

} // namespace

void describeFields(const QWidget& page) {
    describe<QLineEdit>(page);
    describe<QComboBox>(page);
    describe<QAbstractSpinBox>(page);
}

} // namespace app
