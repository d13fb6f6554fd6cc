#include "tests/app/gui/fake_webcam.h"
#include "tests/app/gui/test_program.h"

int main(int argc, char** argv) {
    support::fakeWebcams(); // before anything asks for cameras
    return support::runTests(argc, argv);
}
