#include "tests/app/gui/test_program.h"

int main(int argc, char** argv) {
    return support::runTests(argc, argv);
}
