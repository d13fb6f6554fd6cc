#pragma once

#include "app/gui/gear/manifests/manifest_words.h"
#include "app/gui/widgets/plain_table_model.h"

namespace app {

/// Tables of today's manifest, with what differs between boat and class in the last column.
std::vector<TableColumn> lineColumns(bool isOld);
std::vector<TableColumn> pointColumns(bool isOld);
std::vector<TableRow> lineRows(const ManifestAnswer& answer);
std::vector<TableRow> pointRows(const ManifestAnswer& answer);
/// Tables of an earlier version, with what is asked differently today in the last column.
std::vector<TableRow> lineRows(const core::Manifest& then, const core::Manifest& today);
std::vector<TableRow> pointRows(const core::Manifest& then, const core::Manifest& today);

} // namespace app
