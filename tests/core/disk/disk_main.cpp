#include "tests/core/disk/disk_figures.h"
#include "tests/support/short_memory.h"

#include <cstdlib>
#include <gtest/gtest.h>
#include <iostream>

namespace {

/// What is on disk is told by our own disk: the files themselves may be in memory.
void useMemoryForFiles() {
    if (std::filesystem::is_directory("/dev/shm")) ::setenv("TMPDIR", "/dev/shm", 0);
}

void printFigures() {
    const support::DiskFigures& all = support::figures();
    std::cout << "power cuts: " << all.imagesCut << " images cut, " << all.filesOpened
              << " club files that differ opened: " << all.lost << " lost, " << all.damaged << " damaged, "
              << all.unfinished << " unfinished\ndisk faults: " << all.diskFaults << " injected, "
              << all.diskErrors << " told\nmemory faults: " << all.memoryFaults << " injected, "
              << all.memoryErrors << " told\nanswers lost: " << all.answersLost
              << ", and if the program is killed at once: " << all.standsAfterKill << std::endl;
}

} // namespace

int main(int count, char** arguments) {
    testing::InitGoogleTest(&count, arguments);
    useMemoryForFiles();
    if (!support::shortMemory::install()) {
        std::cerr << "SQLite does not take another memory" << std::endl;
        return 1;
    }
    const int result = RUN_ALL_TESTS();
    printFigures();
    return result;
}
