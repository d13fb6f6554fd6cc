#include "core/club/scanned_code.h"

#include "core/store/tag_tables.h"
#include "core/tag/maker_label.h"
#include "core/tag/tag_code.h"

namespace core {
namespace {

std::optional<TagCode> withoutReplaced(const TagCode& code, Database& database) {
    if (code.tagClass() != TagClass::Kit) return code;
    const auto item = tagTables::itemOf(database, code.text());
    return item ? TagCode::exact(*item) : std::nullopt;
}

} // namespace

std::optional<TagCode> scannedCode(const ScannedText& scan, Database& database, const RegisterStore& store,
                                   int year) {
    if (!scan.isGs1) {
        const auto code = TagCode::parse(scan.text);
        return code ? withoutReplaced(*code, database) : std::nullopt;
    }
    const auto label = parseMakerLabel(scan.text, year);
    if (!label || label->serial.empty()) return std::nullopt;
    const auto items = store.itemsOfLabel(label->gtin, label->serial);
    if (!items.empty()) return TagCode::exact(items.front().id);
    // A club may print its own codes as the serial of a GS1 label.
    const auto code = TagCode::exact(label->serial);
    return code ? withoutReplaced(*code, database) : std::nullopt;
}

} // namespace core
