#pragma once

#include "tests/support/ctl_process.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/small_club_files.h"

#include <nlohmann/json.hpp>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <filesystem>
#include <string>
#include <vector>

namespace small_club {

using Json = nlohmann::ordered_json;
using support::ctl;
using support::Ran;

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
