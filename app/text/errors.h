#pragma once

#include "core/base/error.h"

#include <QString>

namespace app {

// What core found wrong, in the language of the program. Works without an application object.

/// One sentence without a full stop: what happened, with the error's arguments in it.
QString errorInWords(const core::Error& error);
/// What to do about it; empty when there is nothing to say.
QString mendInWords(const core::Error& error);
/// Where: file, file:row:column, option, or a place in the record. May be empty.
QString placeInWords(const core::Error& error);
/// Why a row of an import, or a cell of it, is rejected: what is wrong and how to mend it. No full stop.
QString rejectionInWords(const core::Error& reason);

/// One line for the error channel: what (where); what to do. No full stop.
QString errorLine(const core::Error& error);
/// The same as a sentence, with a capital and a full stop.
QString errorSentence(const core::Error& error);

} // namespace app
