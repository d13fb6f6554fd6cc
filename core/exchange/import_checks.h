#pragma once

#include "core/exchange/import_draft.h"

namespace core {

/// Rejects touched rows whose cells do not go together, with each other or with other rows of the draft.
/// Their names must be spelled already.
void checkRows(ImportDraft& draft, Rejections& rejections);

} // namespace core
