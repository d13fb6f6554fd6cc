#include "app/gui/gear/exchange/look_leads.h"

#include "app/gui/gear/register/register_rows.h"
#include "app/gui/widgets/gear_page.h"
#include "core/club/club.h"
#include "core/club/club_exchange.h"
#include "core/club/club_register.h"
#include "core/register/sheets.h"

#include <QWidget>

namespace app {
namespace {

void showRow(core::SheetId id, const std::string& name, const GearTools& tools, QWidget& asker) {
    tools.club.ask(
        &asker, [id, name](core::Club& club) { return club.register_().rowNamed(id, name); },
        [id, tools](const core::Result<core::Cells>& row) {
            const bool isOfKitType = id == core::SheetId::Sizes || id == core::SheetId::LifeRules;
            // A row that is called otherwise by now is found among the others.
            tools.showSheet(isOfKitType ? core::SheetId::KitTypes : id, row ? keyOfRow(id, *row) : QString());
        });
}

} // namespace

void lookAt(const core::LookAt& found, const GearTools& tools, QWidget& asker) {
    using Kind = core::LookAt::Kind;
    if (found.kind == Kind::OutTwice || found.kind == Kind::SignedTwice)
        return tools.showHistory(QString::fromStdString(found.name));
    if (!found.item.id.empty()) return tools.showItem(QString::fromStdString(found.item.id));
    const core::Sheet* sheet = core::sheetOfName(found.sheet);
    if (!sheet) return;
    switch (sheet->id) {
    case core::SheetId::Items:
        return tools.showItem(QString::fromStdString(found.name));
    case core::SheetId::ManifestLines:
    case core::SheetId::Points:
        return tools.showPage("manifests");
    case core::SheetId::Log:
        return tools.showPage("log");
    case core::SheetId::Boats:
    case core::SheetId::People:
    case core::SheetId::Places:
    case core::SheetId::KitTypes:
    case core::SheetId::Sizes:
    case core::SheetId::LifeRules:
        return showRow(sheet->id, found.name, tools, asker);
    default: // of an item: its code comes first in the name
        tools.showItem(QString::fromStdString(found.name.substr(0, found.name.find('/'))));
    }
}

} // namespace app
