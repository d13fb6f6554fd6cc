#pragma once

#include "core/exchange/import_draft.h"

namespace core {

/// Rejects touched rows whose cells do not go together, with each other or with other rows of the draft.
/// Their names must be spelled already.
void checkRows(ImportDraft& draft, Rejections& rejections);

/// What can be taken as it is and is not likely to be meant: a boat class with manifest lines and no boat, a
/// boat whose class has none, a class or kit type one slip away from another, a kit type asked for that no
/// item has, a rule without a source, life jackets that are not marked as worn, days after `today` or out of
/// order. Only about rows of the files, by file and row. Names must be spelled already.
std::vector<RejectedRow> warningsOf(const ImportDraft& draft, CalendarDay today);

/// Whether a club calls so what keeps a person afloat, in one of the program's two languages.
bool isCalledJacket(const std::string& kitType);

} // namespace core
