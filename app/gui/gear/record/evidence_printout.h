#pragma once

#include "app/gui/widgets/list_row.h"
#include "core/answers/evidence.h"

#include <QImage>
#include <QString>
#include <QStringList>

#include <vector>

class QPagedPaintDevice;

namespace app {

/// A photograph with what it belongs to.
struct EvidencePhoto {
    QImage image; ///< null: its bytes are not what was recorded
    QString title;
    QString remark; ///< when, and by whom
};

/// What the record says of a boat at an instant, in words; the same on the screen and on paper.
struct EvidencePrintout {
    QString club;
    QString boat;
    QString on;       ///< in words
    QString answer;   ///< the sentence first
    QStringList more; ///< who was aboard, who signed, when it came back
    std::vector<ListRow> rows;
    QStringList proof;    ///< where it stands in the record, and the chain's head
    bool isKnown = false; ///< a launch check had been signed by then
    std::vector<EvidencePhoto> photos = {};
};

EvidencePrintout evidencePrintoutOf(const core::Evidence& evidence, const QString& club,
                                    core::CalendarDay today);

/// A4, black on white, as many pages as it takes, each with the boat, the instant and the chain's head. False
/// when the device cannot be painted on.
bool paintEvidence(QPagedPaintDevice& device, const EvidencePrintout& printout);
/// The same as a PDF; the file is whole or as it was.
bool saveEvidence(const QString& file, const EvidencePrintout& printout);

} // namespace app
