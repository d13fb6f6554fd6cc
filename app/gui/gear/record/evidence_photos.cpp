#include "app/gui/gear/record/evidence_photos.h"

#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club.h"
#include "core/club/club_log.h"
#include "core/club/club_photos.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <set>

namespace app {
namespace {

struct EvidencePhotosText {
    Q_DECLARE_TR_FUNCTIONS(EvidencePrintout)
};

using Entries = std::map<std::string, core::LogEntry>; // by id

/// Of the boat and of what was aboard, as far as it was written by then and not closed before.
Entries entriesOpenAt(const core::Club& club, const core::Evidence& evidence) {
    Entries open;
    const auto entries = club.log().entries();
    if (!entries) return open;
    const core::CalendarDay day = evidence.on.localDay();
    for (const core::LogEntry& entry : *entries)
        if (entry.day <= day && (!entry.closed || *entry.closed >= day)) open.emplace(entry.id, entry);
    return open;
}

QString captionOf(const core::Photo& photo, const Entries& entries, const core::AboardItem* item) {
    const QString of = item ? QStringLiteral("%1 %2").arg(text(item->kitType), codeInWords(item->item.id))
                            : text(photo.boat);
    if (photo.entry.empty()) return withCapital(of);
    const core::LogEntry& entry = entries.at(photo.entry);
    return EvidencePhotosText::tr("%1, log of %2: %3")
        .arg(withCapital(of), inWords(entry.day), text(entry.text));
}

} // namespace

std::vector<EvidencePhoto> photosOf(const core::Club& club, const core::Evidence& evidence,
                                    core::CalendarDay today) {
    std::vector<EvidencePhoto> photos;
    if (!evidence.launch) return photos;
    const Entries entries = entriesOpenAt(club, evidence);
    std::map<std::string, const core::AboardItem*> aboard; // by id
    for (const core::AboardItem& item : evidence.aboard)
        aboard.emplace(item.item.id, &item);
    for (const core::Photo& photo : club.photos().all()) {
        const auto item = aboard.find(photo.item);
        const bool isAboard = item != aboard.end(), isOfBoat = photo.boat == evidence.boat;
        const bool belongs = photo.entry.empty() ? photo.at <= evidence.on : entries.contains(photo.entry);
        if ((!isAboard && !isOfBoat) || !belongs) continue;
        const auto jpeg = club.photos().jpegOf(photo.sha256);
        const QString at = inWords(photo.at, today);
        photos.push_back({jpeg ? QImage::fromData(QByteArray::fromStdString(*jpeg), "jpeg") : QImage(),
                          captionOf(photo, entries, isAboard ? item->second : nullptr),
                          photo.by.empty()
                              ? EvidencePhotosText::tr("photographed %1").arg(at)
                              : EvidencePhotosText::tr("photographed %1, by %2").arg(at, text(photo.by))});
    }
    return photos;
}

} // namespace app
