#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_answers.h"
#include "core/club/club_photos.h"
#include "core/club/club_register.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/history_words.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QJsonDocument>
#include <QJsonObject>

#include <memory>

namespace app {
namespace {

struct HistoryOptions : CommonOptions {
    std::string subject;
};

/// Who wrote it, and by whose PIN.
QString writerOf(const core::HistoryLine& line) {
    if (line.proven.empty()) return text(line.by);
    if (line.proven == line.by) return QStringLiteral("%1, by PIN").arg(text(line.by));
    return QStringLiteral("%1, by the PIN of %2").arg(text(line.by), text(line.proven));
}

/// `photo --show` asks for a picture by its hash.
QString hashOf(const core::HistoryLine& line) {
    if (line.kind != "photo-added") return {};
    const auto body = QJsonDocument::fromJson(QByteArray::fromStdString(line.body)).object();
    return QStringLiteral(" ") + body["sha256"].toString();
}

void sayHistory(const std::string& subject, const std::vector<core::HistoryLine>& lines,
                core::CalendarDay today) {
    sayLine(counted(static_cast<int>(lines.size()), "%n line of history of ", "%n lines of history of ") +
            text(subject) + QStringLiteral("."));
    std::vector<QStringList> table;
    for (const core::HistoryLine& line : lines)
        table.push_back({inWords(line.at.value_or(line.recordedAt), today),
                         withCapital(inWords(line)) + hashOf(line), writerOf(line), text(line.machineName)});
    sayText(tableOf({"when", "what", "by", "machine"}, table));
}

std::vector<core::Photo> photosOf(const core::Club& club, const std::string& subject) {
    auto photos = club.photos().ofItem(subject);
    const auto tagged = club.register_().boatOfTag(subject);
    return photos.empty() ? club.photos().ofBoat(tagged ? tagged->name : subject) : photos;
}

int history(const HistoryOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto lines = club.answers().history(options.subject);
        if (!lines) return fail(lines.error());
        if (options.json)
            say(historyJson(options.subject, *lines, photosOf(club, options.subject)));
        else
            sayHistory(options.subject, *lines, moment.today);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addHistory(CommandLine& line) {
    auto options = std::make_shared<HistoryOptions>();
    Command command = line.add("history", "everything recorded about an item, a boat or a person",
                               [options] { return history(*options); });
    takeCommon(command, *options);
    command.more("In words, the oldest first. With --json everything as it was recorded.");
    command.file("OF", options->subject, "a tag code, or the name of a boat or person");
}

} // namespace app
