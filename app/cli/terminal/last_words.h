#pragma once

namespace app {

/// Sees to it that the program, whatever gives out beneath it, says one line and ends with ExitFailed. Once,
/// at its start.
/// - What Qt has to say is no answer to a person, so it is not printed: what failed is told by the error
/// line.
///   Only what Qt ends the program for is.
/// - Memory may be short where nothing may be thrown (a destructor): the program then ends by terminate().
/// - A file that may not grow is a failed write and no signal.
void prepareLastWords();

} // namespace app
