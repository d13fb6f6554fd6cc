#include "app/desk/gear/shared/printed_tags.h"

#include "app/common/words.h"

namespace app {

std::string printedTag(const PrintedTags& tags, const std::string& code) {
    const auto found = tags.find(code);
    return found == tags.end() ? code : found->second;
}

std::vector<CheckRow> withPrintedTags(std::vector<CheckRow> rows, const PrintedTags& tags) {
    for (CheckRow& row : rows) {
        const std::string code = row.code.toStdString();
        const QString first = codeInWords(code), printed = codeInWords(printedTag(tags, code));
        if (!row.asideIsCode || printed == first) continue;
        row.aside.replace(first, printed);
        row.detail.replace(first, printed);
    }
    return rows;
}

} // namespace app
