#pragma once

#include "core/exchange/import_draft.h"

namespace core {

/// What can be taken as it is and is not likely to be meant: a boat class with manifest lines and no boat, a
/// boat whose class has none, a class or kit type one slip away from another, a kit type asked for that no
/// item has, a rule without a source, life jackets that are not marked as worn. Only about rows of the files,
/// by file and row. Names must be spelled already.
std::vector<RejectedRow> warningsOf(const ImportDraft& draft);

} // namespace core
