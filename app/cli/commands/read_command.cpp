#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"

#include "app/cli/commands/picture_reading.h"
#include "app/cli/commands/stream_reading.h"
#include "app/cli/json/json_out.h"
#include "app/cli/terminal/terminal.h"
#include "app/flow/seen_text.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct ReadOptions : CommonOptions {
    std::vector<std::string> paths;
    std::string effort = "full";
    double seconds = 2;
    bool burst = false;
};

void sayReading(const scanner::PathReading& reading) {
    const QString path = text(reading.path.string());
    const int count = static_cast<int>(reading.seen.size());
    sayLine(count == 0 ? QStringLiteral("%1: no code").arg(path)
                       : path + counted(count, ": %n code", ": %n codes"));
    for (const scanner::SeenCode& code : reading.seen) {
        const auto tag = tagOfText(code.text, code.gs1);
        const bool guessed = code.howRead == scanner::HowRead::Guessed;
        sayLine(
            QStringLiteral("  %1  %2%3")
                .arg(tag ? codeInWords(*tag) : text(code.text),
                     QString::fromLatin1(scanner::nameOf(code.symbology)),
                     guessed ? QStringLiteral("  guessed: no check takes it from one picture") : QString()));
        if (tag && code.printGrade && *code.printGrade < scanner::wornPrint)
            sayLine(
                QStringLiteral(
                    "    its print is wearing out (grade %1 of 4): print a new tag while this one is read")
                    .arg(*code.printGrade, 0, 'f', 1));
    }
}

/// Reading is not checking: what needed guesswork is told too, and marked.
void tellGuesses(scanner::PathReading& reading) {
    reading.seen.insert(reading.seen.end(), reading.doubtful.begin(), reading.doubtful.end());
    reading.doubtful.clear();
}

void sayStream(const scanner::StreamReading& stream) {
    const int count = static_cast<int>(stream.seen.size());
    sayLine(count == 0 ? QStringLiteral("%1: no code").arg(text(stream.name))
                       : text(stream.name) + counted(count, ": %n code", ": %n codes"));
    for (const scanner::StreamSight& sight : stream.seen) {
        const auto tag = tagOfText(sight.code.text, sight.code.gs1);
        sayLine(QStringLiteral("  %1  %2  frame %3%4")
                    .arg(tag ? codeInWords(*tag) : text(sight.code.text),
                         QString::fromLatin1(scanner::nameOf(sight.code.symbology)),
                         QString::number(sight.frame),
                         sight.guessed ? QStringLiteral("  guessed once: no check takes it") : QString()));
    }
}

int readBursts(const ReadOptions& options) {
    bool faulty = false;
    const auto streams = readStreams(options.paths, faulty);
    if (faulty && streams.empty()) return ExitBadInput;
    if (options.json)
        say(streamsJson(streams));
    else
        std::for_each(streams.begin(), streams.end(), sayStream);
    if (faulty) return ExitBadInput;
    const auto showsNone = [](const scanner::StreamReading& stream) { return stream.seen.empty(); };
    return std::any_of(streams.begin(), streams.end(), showsNone) ? ExitNeedsSomebody : ExitFine;
}

int read(const ReadOptions& options) {
    if (options.burst) return readBursts(options);
    auto readings = readPictures(options.paths, {options.effort == "full", options.seconds});
    const bool faulty = reportUnreadable(readings);
    std::erase_if(readings, [](const scanner::PathReading& reading) { return reading.error.has_value(); });
    if (faulty && readings.empty()) return ExitBadInput;
    std::for_each(readings.begin(), readings.end(), tellGuesses);
    if (options.json)
        say(readingsJson(readings));
    else
        std::for_each(readings.begin(), readings.end(), sayReading);
    if (faulty) return ExitBadInput;
    const auto showsNone = [](const scanner::PathReading& reading) { return reading.seen.empty(); };
    return std::any_of(readings.begin(), readings.end(), showsNone) ? ExitNeedsSomebody : ExitFine;
}

} // namespace

void addRead(CommandLine& line) {
    auto options = std::make_shared<ReadOptions>();
    Command command = line.add("read", "the codes in pictures, folders of pictures, or videos",
                               [options] { return read(*options); });
    takeCommon(command, *options, Takes::NoFile);
    command.more("No club file: prints each code that is seen.");
    command.needsSomebody("a picture shows no code");
    command.paths("PATH", options->paths, "pictures, folders, videos");
    command.choice("--effort", options->effort, {"fast", "full"},
                   "the fast pass alone, or all that may help (full)");
    command.number("--seconds", options->seconds, 0.01, 600, "most time for a picture, with all effort (2)");
    command.flag("--burst", options->burst,
                 "each PATH is a folder of streams NAME_0.jpg, NAME_1.jpg …, read as a live view reads");
    command.notTogether("--burst", "--effort");
    command.notTogether("--burst", "--seconds");
}

} // namespace app
