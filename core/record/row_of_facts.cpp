#include "core/record/row_of_facts.h"

#include <nlohmann/json.hpp>

namespace core {
namespace {

using nlohmann::json;

void setCells(const Sheet& sheet, const json& from, Cells& cells) {
    for (const auto& [column, text] : from.items()) {
        const int index = sheet.indexOf(column);
        if (index >= 0 &&
            text.is_string()) // a column of a newer program is kept in the fact, not in the table
            cells[static_cast<std::size_t>(index)] = text.get<std::string>();
    }
}

} // namespace

void overlay(const Sheet& sheet, const Fact& fact, const json& body, StoredRow& row) {
    row.stamp = fact.stamp();
    row.isGone = body.value("gone", false);
    if (row.isGone) {
        row.cells.assign(sheet.columns.size(), {});
        return;
    }
    row.cells.resize(sheet.columns.size());
    setCells(sheet, body.at("row"), row.cells);
    if (body.contains("set")) setCells(sheet, body["set"], row.cells);
    row.position = body.value("order", row.position);
}

} // namespace core
