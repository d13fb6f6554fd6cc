#include "tests/support/short_memory.h"

#include <sqlite3.h>

namespace support::shortMemory {
namespace {

sqlite3_mem_methods own;
int count = 0;
int failing = 0; // none
bool isLasting = false;
bool failed = false;

bool isRefused() {
    ++count;
    const bool refused = failing != 0 && (count == failing || (isLasting && count > failing));
    failed = failed || refused;
    return refused;
}

void* watchedMalloc(int size) {
    return isRefused() ? nullptr : own.xMalloc(size);
}

void* watchedRealloc(void* memory, int size) {
    return isRefused() ? nullptr : own.xRealloc(memory, size);
}

} // namespace

bool install() {
    if (sqlite3_config(SQLITE_CONFIG_GETMALLOC, &own) != SQLITE_OK) return false;
    sqlite3_mem_methods watched = own;
    watched.xMalloc = watchedMalloc;
    watched.xRealloc = watchedRealloc;
    return sqlite3_config(SQLITE_CONFIG_MALLOC, &watched) == SQLITE_OK;
}

void fail(int nth, bool lasting) {
    count = 0;
    failing = nth;
    isLasting = lasting;
    failed = false;
}

void heal() {
    failing = 0;
}
bool hasFailed() {
    return failed;
}
int requests() {
    return count;
}

} // namespace support::shortMemory
