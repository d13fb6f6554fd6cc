#pragma once

#include "core/base/calendar_day.h"
#include "core/base/instant.h"
#include "core/check/boat_check.h"
#include "core/club/club.h"
#include "core/club/club_checks.h"
#include "core/club/club_register.h"
#include "tests/support/errors.h"
#include "tests/support/scratch_folder.h"

#include <fstream>
#include <map>
#include <stdexcept>
#include <string>

namespace support {

/// The published mandatory list of loose kit of a small inshore inflatable (a national surf-lifesaving
/// authority's boat manual, 9th edition, topic "equipment"): knife, pair of paddles, rescue tube, whistle,
/// tow rope, radio.
inline const std::map<std::string, std::string> publishedKit{
    {"KGFB6J8WF9", "knife"},       {"K80NSC1FX4", "paddle"},  {"KBDWAF2K6T", "paddle"},
    {"K6JYGNZ376", "rescue tube"}, {"K0D6EKB9KR", "whistle"}, {"K79TE08WXH", "tow line"},
    {"KD2289T9SE", "radio"},
};

inline void writeFile(const std::filesystem::path& file, const std::string& text) {
    std::ofstream(file) << text;
}

/// A club of one boat that carries the published list, in a scratch folder.
class SmallClub {
public:
    SmallClub()
        : club(make()) {}

    core::Moment at(const std::string& instant) const {
        const auto when = *core::Instant::parse(instant);
        return {when, *core::CalendarDay::parse(instant.substr(0, 10))};
    }
    std::string open(core::Phase phase = core::Phase::Launch, const std::string& boat = "Petrel") {
        return club.checks().open(boat, phase, now)->check;
    }
    core::Scanned scan(const std::string& check, const std::string& code) {
        return *club.checks().scan(check, core::ScannedText::typed(code), core::SeenBy::Typed, now);
    }
    void scanAll(const std::string& check, const std::string& but = {}) {
        for (const auto& [code, type] : publishedKit)
            if (code != but) scan(check, code);
    }
    void import(const std::string& file, const std::string& text) {
        std::filesystem::create_directories(folder / "more");
        writeFile(folder / "more" / file, text);
        const auto plan = club.register_().importCsv(folder / "more", now.today, false);
        if (!plan || !plan->rejected.empty())
            throw std::runtime_error(described(plan ? plan->rejected.front().reason : plan.error()));
        std::filesystem::remove_all(folder / "more");
    }
    /// Puts another club in its place, so that nothing holds the file.
    void close() { club = core::Club::create(folder / "other.tholepin", "Other").value(); }
    std::filesystem::path file() const { return folder / "club.tholepin"; }

    ScratchFolder folder;
    core::Moment now = at("2026-03-14T06:40:00Z");
    core::Club club;

private:
    core::Club make() {
        const auto csv = folder / "csv";
        std::filesystem::create_directories(csv);
        std::string items = "code,kit_type,boat\n";
        for (const auto& [code, type] : publishedKit)
            items += code + "," + type + ",Petrel\n";
        writeFile(csv / "items.csv", items);
        writeFile(csv / "kit_types.csv", "kit_type\nknife\npaddle\nrescue tube\nwhistle\ntow line\nradio\n");
        writeFile(csv / "boats.csv", "boat,boat_class,tag\nPetrel,inflatable,\nTern,inflatable,\n");
        writeFile(csv / "manifest_lines.csv",
                  "boat_class,kit_type,quantity\ninflatable,knife,1\ninflatable,paddle,2\n"
                  "inflatable,rescue tube,1\ninflatable,whistle,1\ninflatable,tow line,1\n"
                  "inflatable,radio,1\n");
        writeFile(csv / "people.csv", "person,role\nOdalys Finch,driver\nBram Oke,crew\n");
        writeFile(csv / "points.csv", "boat_class,phase,point,kind,unit,low,high,required\n"
                                      "inflatable,launch,bow chamber,measure,kPa,18,22,no\n");
        auto made = core::Club::create(file(), "Small club");
        const auto plan = made->register_().importCsv(csv, now.today, false);
        if (!plan || !plan->rejected.empty())
            throw std::runtime_error(described(plan ? plan->rejected.front().reason : plan.error()));
        return std::move(*made);
    }
};

} // namespace support
