#include "app/paper/order_sheet.h"

#include "app/paper/csv_rows.h"

#include <QString>

#include <vector>

namespace app {
namespace {

std::string numberOf(double value) {
    return QString::number(value, 'g', 15).toStdString();
}

template <class Value, class Text>
std::string orEmpty(const std::optional<Value>& value, Text text) {
    return value ? text(*value) : std::string();
}

std::string isoDay(core::CalendarDay day) {
    return day.iso();
}

std::vector<std::string> cellsOf(const core::ReplacementRow& row) {
    return {csvText(row.kitType),
            csvText(row.size),
            orEmpty(row.quantity, [](int count) { return std::to_string(count); }),
            std::to_string(row.pack),
            orEmpty(row.price, numberOf),
            orEmpty(row.cost, numberOf),
            orEmpty(row.orderBy, isoDay),
            row.late ? "yes" : "no",
            orEmpty(row.firstShort, isoDay),
            std::to_string(row.budgetYear.value_or(0)),
            std::to_string(row.wanted),
            std::to_string(row.stock)};
}

} // namespace

std::string orderCsv(const core::ReplacementPlan& plan) {
    std::string csv = csvRow({"kit_type", "size", "quantity", "pack", "price", "cost", "order_by", "late",
                              "first_short", "budget_year", "wanted", "stock"});
    for (const core::ReplacementRow& row : plan.rows)
        if (row.runsShort()) csv += csvRow(cellsOf(row));
    return csv;
}

} // namespace app
