#include "app/gui/gear/kit/tag_delivery.h"

#include "app/gui/gear/setup/set_up_notes.h"
#include "app/paper/tag_sheet.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"

#include <QCoreApplication>

namespace app {
namespace {

struct TagDeliveryText {
    Q_DECLARE_TR_FUNCTIONS(TagDelivery)
};

} // namespace

void saveTags(const GearTools& tools, QWidget& page, const std::vector<std::string>& codes,
              const std::function<void(const core::Result<QString>&)>& then) {
    const QString file = fileToSave(tools.choosers, &page, TagDeliveryText::tr("tags.pdf"));
    if (file.isEmpty()) return;
    tools.club.ask(
        &page,
        [codes, path = file.toStdString()](core::Club& club) -> core::Result<int> {
            const auto labels = club.kit().tagLabels(codes);
            if (!labels) return labels.error();
            return writeTagSheets(path, *labels);
        },
        [then, file, club = tools.club.file()](const core::Result<int>& sheets) {
            if (!sheets) return then(sheets.error());
            SetUpNotes(club).notePrinted();
            then(TagDeliveryText::tr("Saved: %1, %2. Print it at 100 %, and measure the bar on it.")
                     .arg(counted(*sheets, QT_TRANSLATE_N_NOOP("Words", "%n sheet"),
                                  QT_TRANSLATE_N_NOOP("Words", "%n sheets")),
                          text(file)));
        });
}

} // namespace app
