#include "tests/support/scratch_folder.h"

// In every test program: the keys that its clubs are signed with go to a folder of its own, which is gone
// with it, and never to the state folder of whoever runs the tests.

namespace {

struct OwnStateFolder {
    OwnStateFolder() {
        if (getenv("THOLEPIN_STATE") == nullptr) setenv("THOLEPIN_STATE", folder.path().c_str(), 1);
    }
    support::ScratchFolder folder;
};

const OwnStateFolder ownStateFolder;

} // namespace
