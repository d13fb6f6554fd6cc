#pragma once

#include "core/answers/board.h"
#include "core/answers/due_list.h"
#include "core/answers/history.h"
#include "core/answers/missing_list.h"
#include "core/base/calendar_day.h"
#include "core/check/boat_check.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_pins.h"
#include "core/exchange/club_sheet/club_sheet.h"
#include "core/exchange/csv_import.h"
#include "core/record/verification.h"
#include "core/register/photo.h"
#include "scanner/files/picture_streams.h"
#include "scanner/files/read_path.h"

#include <string>
#include <utility>
#include <vector>

namespace core {
struct ToldWord;
}

namespace app {

// The documents of the command line: one UTF-8 JSON text each, ending with a line end. snake_case names, ISO
// days, UTC instants, codes as strings, what is absent is null. Names are never renamed, only added.

/// A check as it stands, with what only this run knows.
struct CheckReport {
    std::string check; ///< id
    core::CheckAnswer answer;
    std::string signedBy; ///< empty: not signed
    std::string urgent;
    std::vector<std::string> unread; ///< as they came
};

std::string checkJson(const CheckReport& report);
std::string discardedJson(const core::OpenCheck& check, const std::string& reason);
std::string readingsJson(const std::vector<scanner::PathReading>& readings);
std::string streamsJson(const std::vector<scanner::StreamReading>& streams);
std::string importJson(const core::ImportPlan& plan);
std::string clubSheetJson(const core::ClubSheetPlan& read);
std::string boatsJson(const std::vector<core::BoatCondition>& boats,
                      const std::vector<core::PinReset>& resets);
std::string missingJson(const std::vector<core::MissingItem>& items);
std::string dueJson(const std::vector<core::DueRow>& rows, core::CalendarDay today);
std::string startersJson(const std::vector<std::pair<std::string, std::string>>& starters); ///< name, title
std::string renamedJson(const std::string& sheet, const std::string& from, const std::string& to,
                        const std::vector<core::Error>& warnings);
std::string removedRuleJson(const std::string& rule);
std::string removedJson(const std::string& sheet, const std::string& name);
std::string clubJson(const std::string& name);
/// What is known now, and what was forgotten just now.
std::string wordsJson(const std::vector<core::ToldWord>& words, const std::vector<core::ToldWord>& forgotten);
/// `kind`: boat, person or place.
std::string endedJson(const std::string& kind, const std::string& name, core::CalendarDay until);
std::string erasedJson(const std::string& person, int cells);
std::string verificationJson(const core::Verification& verification);
std::string logJson(const std::vector<core::LogEntry>& entries, const std::vector<core::Photo>& photos);
std::string logEntryJson(const core::LogEntry& entry);
std::string closedJson(const std::string& entry);
std::string historyJson(const std::string& subject, const std::vector<core::HistoryLine>& lines,
                        const std::vector<core::Photo>& photos);
std::string codesJson(const std::vector<std::string>& codes);
std::string listJson(const std::string& list, const std::string& file, int rows);
std::string checkListJson(const std::string& boat, const std::string& file, int pages);
std::string fileJson(const std::string& file); ///< {"file": …}: what was written
std::string tagsJson(const std::string& file, int sheets, const std::vector<core::TagLabel>& labels);

/// Pictures of a scene: file, and the codes that are in full view on it.
using ScenePictures = std::vector<std::pair<std::string, std::vector<std::string>>>;
std::string sceneJson(const std::string& boat, const ScenePictures& pictures);

} // namespace app
