#pragma once

#include "tests/support/ctl_process.h"
#include "tests/support/scratch_folder.h"

#include <nlohmann/json.hpp>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace small_club {

using Json = nlohmann::ordered_json;
using support::ctl;
using support::Ran;

/// Two boats of one class, Teal whole and in date on 14 March 2026, Coot with a knife only.
inline const std::string knife = "KD0XPAMAJG", paddle1 = "KVP5CYVRE7", paddle2 = "KERWRHZ7DY",
                         towLine = "KDVK4H6SRX", jacketM = "KGYD21XNA5", jacketL = "K2P9VZ9SMA",
                         radio = "KCYV1T03ZE", cootKnife = "KMRMQRZM66", writtenOff = "KTY3P2SKK1",
                         unknownTag = "KF9DPHVFJK";
inline const std::string tealTag = "BVWMV0JQQG", cootTag = "BXSW78G7S1", adaTag = "P5269VZ10C",
                         boTag = "PAQVR7K7RF";
inline const std::string finishTag = "C00000001Y", nextBoatTag = "C00000002W", undoTag = "C00000004S",
                         damagedTag = "C00000005Q", clockTag = "C00000008K", putAsideTag = "C00000010W";
inline const std::string today = "2026-03-14";

/// What makes Teal complete, with the two who go out in it.
std::vector<std::string> wholeKit();
std::string lines(const std::vector<std::string>& codes); ///< one a line
std::vector<std::string> without(std::vector<std::string> codes, const std::string& code);

/// The club's CSV files by name; a test may change them before it writes them.
std::map<std::string, std::string> csvFiles();
void writeFiles(const std::filesystem::path& folder, const std::map<std::string, std::string>& files);

/// Every row of every table, so that two files of the same content are equal.
std::string contentOf(const std::filesystem::path& file);

/// Every byte.
std::string textOf(const std::filesystem::path& file);

/// That exactly one line came, which begins as every error line does.
void expectOneErrorLine(const Ran& ran);

/// A club file of its own for each test.
class SmallClub : public testing::Test {
protected:
    SmallClub();

    std::string write(const std::string& name, const std::string& text) const; ///< a file beside it; its path
    Ran run(std::vector<std::string> words,
            const std::string& input = {}) const; ///< command, club file, the rest
    Ran check(const std::vector<std::string>& codes, std::vector<std::string> more = {},
              const std::string& day = today) const; ///< Teal, launch, Ada and Bo, all points done
    std::string content() const { return contentOf(m_file); }

    support::ScratchFolder m_folder;
    std::filesystem::path m_file;
};

} // namespace small_club
