#include "core/base/error_code.h"
#include "core/base/given_text.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club_state.h"

#include "core/base/plain_text.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_register.h"
#include "core/tag/reason.h"

#include <algorithm>

namespace core {

Result<std::vector<LogEntry>> ClubLog::entries(const std::string& name) const {
    return guarded([&]() -> Result<std::vector<LogEntry>> {
        const ReadSnapshot asOfNow(*m_state->database);
        std::vector<LogEntry> entries;
        if (name.empty()) {
            entries = m_state->registerStore.allLog();
        } else {
            const auto found = ClubRegister(*m_state).boat(name);
            if (!found) return found.error();
            entries = m_state->registerStore.logOfBoat(found->name);
        }
        std::stable_partition(entries.begin(), entries.end(),
                              [](const LogEntry& entry) { return !entry.closed; });
        return entries;
    });
}

Result<LogEntry> ClubLog::add(const std::string& about, const std::string& text, Severity severity,
                              const std::string& by, Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Result<LogEntry> {
        if (withoutOuterBlanks(text).empty()) return Error{ErrorCode::LogEntryEmpty};
        const auto words = reasonFrom(text);
        if (!words) return words.error();
        const auto writer = nameFrom(by, "by");
        if (!writer) return writer.error();
        LogEntry entry{.day = moment.today};
        if (const auto boat = m_state->registerStore.boat(about))
            entry.boat = boat->name;
        else if (const auto known = ClubKit(*m_state).item(about))
            entry.item = known->name();
        else
            return Error{ErrorCode::NoSuchLogSubject, {about}};
        entry.text = m_state->newLogText(entry.boat, entry.item.id, entry.day, *words);
        entry.severity = severity;
        entry.by = *writer;
        const RowWritten row = rowWritten(
            SheetId::Log,
            {{"boat", entry.boat}, {"code", entry.item.id}, {"day", entry.day.iso()}, {"text", entry.text}},
            {{"severity", core::nameOf(severity)}, {"by", entry.by}, {"closed", ""}, {"closing", ""}});
        entry.id = logEntryId({entry.boat, entry.item.id, entry.day.iso(), entry.text});
        ledger.append(row, entry.by);
        return entry;
    });
}

Outcome ClubLog::close(const std::string& id, const std::string& closing, const std::string& by,
                       Moment moment) {
    return m_state->write(Right::Anybody, [&](Ledger& ledger) -> Outcome {
        for (const LogEntry& entry : m_state->registerStore.allLog()) {
            if (entry.id != id) continue;
            const auto words = reasonFrom(closing);
            if (!words) return words.error();
            const auto writer = nameFrom(by, "by");
            if (!writer) return writer.error();
            if (entry.closed) return Error{ErrorCode::LogEntryClosed, {entry.closed->iso()}};
            closeEntry(ledger, entry, *words, *writer, moment.today);
            m_state->endUrgentOfWhole(ledger, moment.today);
            return Done{};
        }
        return Error{ErrorCode::NoSuchLogEntry, {id}};
    });
}

} // namespace core
