#pragma once

#include "app/gui/widgets/list_row.h"
#include "app/paper/lists/list_table.h"

#include <QString>

#include <vector>

namespace app {

/// A list as a page shows it, for paper and file: what each line stands under, what it is, its tag or number,
/// its remark. Club and day are left open.
ListTable tableOf(const QString& title, const QString& summary, const std::vector<ListRow>& rows);

} // namespace app
