// Our reader beside general-purpose decoders, in one run, on a folder of frames with a truth.json:
//   reader_bench DIR [--json FILE] [--limit N]
// Prints recall by stratum and symbol, wrong texts, processes ended, and processor time of one thread a
// frame, as a table in Markdown; the same as JSON into FILE.

#include "scanner/reader/symbol_reader.h"
#include "tests/bench/library_readers.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/read_apart.h"
#include "tests/scanner/reader/scored_frames.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

using scored::Tallies;

constexpr std::array strata{"all", "easy", "medium", "hard"}, symbols{"QR", "DM", "C128", "GS1"};
constexpr std::array heights{720, 1080};

/// How one reader did on the folder.
struct Standing {
    const char* name;
    scored::ReadingScore score;
    scored::ReadingTimes times;
    int aborts = 0;
    int guesses = 0; ///< texts that a program would believe only from a second frame
};

scored::TextReader ours(bool rescue) {
    scanner::ReadOptions options;
    options.rescue = rescue;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = pictures::isTag;
    return [options](scanner::GreyView picture) {
        return scored::textsOf(scanner::readSymbols(picture, options));
    };
}

Standing standingOf(const char* name, const scored::TextReader& reader, const QString& folder,
                    const QJsonArray& frames) {
    Standing standing{name, scored::ReadingScore(), scored::ReadingTimes()};
    const auto outcomes = scored::readApart(folder, frames, reader);
    for (std::size_t i = 0; i < outcomes.size(); ++i) {
        const scored::FrameOutcome& outcome = outcomes[i];
        standing.score.add(frames[static_cast<qsizetype>(i)].toObject(), outcome.texts);
        standing.aborts += outcome.aborted;
        if (!outcome.aborted) standing.times.add(outcome.height, outcome.milliseconds);
        standing.guesses +=
            static_cast<int>(std::count_if(outcome.texts.begin(), outcome.texts.end(), [](const auto& text) {
                return text.second == scanner::HowRead::Guessed;
            }));
    }
    return standing;
}

double percentOf(const Tallies& tallies, const char* name) {
    const auto found = tallies.find(name);
    return found == tallies.end() ? 0 : found->second.percent();
}

void printTable(const std::vector<Standing>& standings) {
    std::printf("| Reader |");
    for (const char* name : strata)
        std::printf(" %s |", name);
    for (const char* name : symbols)
        std::printf(" %s |", name);
    std::printf(" guesses | wrong | ended |");
    for (const int height : heights)
        std::printf(" %dp ms median / p95 |", height);
    std::printf("\n|");
    for (std::size_t i = 0; i < 4 + strata.size() + symbols.size() + heights.size(); ++i)
        std::printf(" --- |");
    std::printf("\n");
    for (const Standing& s : standings) {
        std::printf("| %s |", s.name);
        for (const char* name : strata)
            std::printf(" %.1f |", percentOf(s.score.strata(), name));
        for (const char* name : symbols)
            std::printf(" %.1f |", percentOf(s.score.symbols(), name));
        std::printf(" %d | %d | %d |", s.guesses, s.score.wrong(), s.aborts);
        for (const int height : heights)
            std::printf(" %.1f / %.1f |", s.times.percentile(height, 0.5), s.times.percentile(height, 0.95));
        std::printf("\n");
    }
}

QJsonObject jsonOf(const Tallies& tallies) {
    QJsonObject object;
    for (const auto& [name, tally] : tallies)
        object[QString::fromStdString(name)] =
            QJsonObject{{"percent", tally.percent()}, {"read", tally.read}, {"all", tally.all}};
    return object;
}

QJsonObject jsonOf(const Standing& s) {
    QJsonObject times;
    for (const int height : heights)
        times[QString::number(height)] = QJsonObject{{"median", s.times.percentile(height, 0.5)},
                                                     {"p95", s.times.percentile(height, 0.95)},
                                                     {"worst", s.times.percentile(height, 1)}};
    return {{"reader", s.name},
            {"recall_by_stratum", jsonOf(s.score.strata())},
            {"recall_by_symbol", jsonOf(s.score.symbols())},
            {"guesses", s.guesses},
            {"wrong", s.score.wrong()},
            {"near_misses_as_printed", s.score.nearMisses()},
            {"ended", s.aborts},
            {"cpu_ms_by_height", times}};
}

bool writeJson(const QString& path, const QString& folder, qsizetype frames,
               const std::vector<Standing>& standings) {
    QJsonArray readers;
    for (const Standing& standing : standings)
        readers.append(jsonOf(standing));
    QFile file(path);
    return file.open(QIODevice::WriteOnly) &&
           file.write(QJsonDocument(QJsonObject{{"folder", folder}, {"frames", frames}, {"readers", readers}})
                          .toJson()) > 0;
}

} // namespace

int main(int argc, char** argv) {
    QString folder, json;
    int most = 1 << 30;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--json" && i + 1 < argc)
            json = QString::fromLocal8Bit(argv[++i]);
        else if (word == "--limit" && i + 1 < argc)
            most = std::atoi(argv[++i]);
        else
            folder = QString::fromLocal8Bit(argv[i]);
    }
    const auto frames = scored::framesIn(folder, most);
    if (!frames) {
        std::fprintf(stderr, "reader_bench: no truth.json in %s\n", qPrintable(folder));
        return 2;
    }
    std::vector<Standing> standings;
    standings.push_back(standingOf("ZXing-cpp, its defaults", bench::readByZxing, folder, *frames));
    standings.push_back(standingOf("ZBar, its defaults", bench::readByZbar, folder, *frames));
    standings.push_back(standingOf("ours, fast pass", ours(false), folder, *frames));
    standings.push_back(standingOf("ours, all steps", ours(true), folder, *frames));
    printTable(standings);
    if (json.isEmpty() || writeJson(json, folder, frames->size(), standings)) return 0;
    std::fprintf(stderr, "reader_bench: cannot write %s\n", qPrintable(json));
    return 1;
}
