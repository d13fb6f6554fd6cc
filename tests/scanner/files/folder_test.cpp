#include "scanner/files/folder.h"

#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

#include <fstream>

namespace scanner {
namespace {

TEST(PicturesIn, listsPicturesSortedWithoutTheRest) {
    const support::ScratchFolder folder;
    for (const char* name : {"b.png", "a.JPG", "c.webp", ".hidden.png", "notes.txt", "noending"})
        std::ofstream(folder / name) << "x";
    std::filesystem::create_directory(folder / "sub.png");
    std::vector<std::string> names;
    for (const auto& path : picturesIn(folder.path()))
        names.push_back(path.filename().string());
    EXPECT_EQ(names, (std::vector<std::string>{"a.JPG", "b.png", "c.webp"}));
}

TEST(PicturesIn, aFolderThatIsNotThereHasNone) {
    EXPECT_TRUE(picturesIn("/no/such/folder").empty());
}

} // namespace
} // namespace scanner
