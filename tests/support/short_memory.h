#pragma once

namespace support {

/// Lets SQLite run out of memory. `install` once in a program, before SQLite is used for the first time.
namespace shortMemory {

bool install();
/// From now on the n-th request for memory, from 1, fails; the later ones, too, when `lasting`.
void fail(int nth, bool lasting);
void heal();
bool hasFailed(); ///< since `fail`
int requests();   ///< since `fail`

} // namespace shortMemory
} // namespace support
