// Recall of the reader on a folder of frames with a truth.json, and the CPU time of one thread:
//   reader_score DIR              one frame, all steps
//   reader_score DIR --fast       one frame, the fast pass
//   reader_score DIR --ablation   what each step adds and costs, as a table in Markdown
//   reader_score DIR --burst      bursts of frames through the live reader, union after each frame; 33 ms of
//   CPU a frame
// further: --budget MS (a frame), --misses (each tag that was not read; in bursts, not by then),
// --limit N (frames), --half 0|1 (even or odd frames only: change a step by one half, look at the other)

#include "scanner/reader/frame_reader.h"
#include "scanner/reader/live_reader.h"
#include "scanner/reader/symbol_reader.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/reading_score.h"
#include "tests/scanner/reader/scored_frames.h"

#include <QJsonObject>

#include <cstdio>
#include <cstdlib>
#include <map>
#include <string>
#include <vector>

namespace {

using scored::cpuMilliseconds;
using scored::ReadingScore;
using scored::ReadingTimes;
using scored::Texts;
using scored::textsOf;
using scored::viewOf;

struct Arguments {
    QString folder;
    bool fast = false, ablation = false, burst = false, misses = false;
    int budget = 0;
    int limit = 1 << 30;
    int half = -1;
};

void scoreFrames(const Arguments& arguments, const QJsonArray& frames) {
    ReadingScore score(arguments.misses);
    ReadingTimes times;
    for (const QJsonValue& value : frames) {
        const QImage image = scored::pictureOf(arguments.folder, value.toObject());
        scanner::ReadOptions options;
        options.rescue = !arguments.fast;
        options.budget = std::chrono::milliseconds(arguments.budget);
        options.isTag = pictures::isTag;
        const double start = cpuMilliseconds();
        const auto codes = scanner::readSymbols(viewOf(image), options);
        times.add(image.height(), cpuMilliseconds() - start);
        score.add(value.toObject(), textsOf(codes));
    }
    score.print();
    times.print();
}

/// Runs the steps one after the other on each frame and looks after each at what has been read and how long
/// it took.
void scoreSteps(const Arguments& arguments, const QJsonArray& frames) {
    std::vector<scanner::reader::ReadingStep> steps(scanner::reader::fastSteps.begin(),
                                                    scanner::reader::fastSteps.end());
    steps.insert(steps.end(), scanner::reader::rescueSteps.begin(), scanner::reader::rescueSteps.end());
    std::vector<ReadingScore> scores(steps.size());
    std::vector<ReadingTimes> own(steps.size()), total(steps.size());
    for (const QJsonValue& value : frames) {
        const QImage image = scored::pictureOf(arguments.folder, value.toObject());
        const double start = cpuMilliseconds();
        scanner::reader::FrameReader frame(scanner::copyOf(viewOf(image)), pictures::isTag);
        double before = start, aside = 0;
        for (std::size_t i = 0; i < steps.size(); ++i) {
            frame.run(steps[i]);
            const double after = cpuMilliseconds();
            own[i].add(image.height(), after - before);
            total[i].add(image.height(), after - start - aside);
            scores[i].add(value.toObject(), textsOf(frame.codes()));
            before = cpuMilliseconds();
            aside += before - after;
        }
    }
    std::printf("| Step (cumulative) | all | easy | medium | hard | wrong | step ms | total ms |\n| --- | "
                "--- | --- | --- | --- | --- | --- | --- |\n");
    for (std::size_t i = 0; i < steps.size(); ++i) {
        std::printf("| %s |", scanner::reader::nameOf(steps[i]));
        for (const char* stratum : {"all", "easy", "medium", "hard"})
            std::printf(" %.1f |",
                        scores[i].strata().count(stratum) ? scores[i].strata().at(stratum).percent() : 0);
        std::printf(" %d | %.1f | %.1f |\n", scores[i].wrong(), own[i].percentile(720, 0.5),
                    total[i].percentile(720, 0.5));
    }
}

/// Each burst through a live reader of its own; a tag counts from the first frame in which it is told. A
/// guess counts when a second frame tells it.
void scoreBursts(const Arguments& arguments, const QJsonArray& frames) {
    std::map<int, ReadingScore> scores;
    ReadingTimes times;
    int burst = -1;
    Texts known, guessed;
    scanner::LiveReader reader(pictures::isTag);
    const std::chrono::milliseconds budget(arguments.budget > 0 ? arguments.budget : 33);
    for (const QJsonValue& value : frames) {
        const QJsonObject frame = value.toObject();
        if (frame["burst"].toInt() != burst) {
            burst = frame["burst"].toInt();
            reader = scanner::LiveReader(pictures::isTag, budget, scanner::LiveReader::Clock::Thread);
            known.clear();
            guessed.clear();
        }
        const QImage image = scored::pictureOf(arguments.folder, frame);
        const double start = cpuMilliseconds();
        const auto codes = reader.read(viewOf(image));
        times.add(image.height(), cpuMilliseconds() - start);
        for (const auto& [text, howRead] : textsOf(codes))
            if (howRead != scanner::HowRead::Guessed || !guessed.emplace(text, howRead).second)
                known.emplace(text, howRead);
        scores.try_emplace(frame["k"].toInt(), arguments.misses).first->second.add(frame, known);
    }
    for (const auto& [k, score] : scores) {
        std::printf("after frame %d\n", k + 1);
        score.print();
    }
    times.print();
}

Arguments parse(int argc, char** argv) {
    Arguments arguments;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--fast")
            arguments.fast = true;
        else if (word == "--ablation")
            arguments.ablation = true;
        else if (word == "--burst")
            arguments.burst = true;
        else if (word == "--misses")
            arguments.misses = true;
        else if (word == "--budget" && i + 1 < argc)
            arguments.budget = std::atoi(argv[++i]);
        else if (word == "--half" && i + 1 < argc)
            arguments.half = std::atoi(argv[++i]);
        else if (word == "--limit" && i + 1 < argc)
            arguments.limit = std::atoi(argv[++i]);
        else if (word.starts_with('-')) {
            std::fprintf(stderr, "reader_score: '%s' is no option of it, or wants a number\n", word.c_str());
            std::exit(2);
        } else
            arguments.folder = QString::fromLocal8Bit(argv[i]);
    }
    return arguments;
}

/// Every second of them, if a half was asked for.
QJsonArray chosen(const QJsonArray& frames, const Arguments& arguments) {
    if (arguments.half < 0) return frames;
    QJsonArray half;
    for (qsizetype i = arguments.half; i < frames.size(); i += 2)
        half.append(frames[i]);
    return half;
}

} // namespace

int main(int argc, char** argv) {
    const Arguments arguments = parse(argc, argv);
    const auto all = scored::framesIn(arguments.folder, arguments.limit);
    if (!all) {
        std::fprintf(stderr, "reader_score: no truth.json in %s\n", qPrintable(arguments.folder));
        return 2;
    }
    const QJsonArray frames = chosen(*all, arguments);
    if (arguments.ablation)
        scoreSteps(arguments, frames);
    else if (arguments.burst)
        scoreBursts(arguments, frames);
    else
        scoreFrames(arguments, frames);
    return 0;
}
