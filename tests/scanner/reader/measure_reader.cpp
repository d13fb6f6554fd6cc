// Recall of the reader on a folder of frames with a truth.json, and the CPU time of one thread:
//   reader_score DIR              one frame, all steps
//   reader_score DIR --fast       one frame, the fast pass
//   reader_score DIR --ablation   what each step adds and costs, as a table in Markdown
//   reader_score DIR --burst      bursts of frames through the live reader, union after each frame; 33 ms of
//   CPU a frame
// further: --budget MS (a frame), --misses (each tag that was not read), --limit N (frames)

#include "scanner/live_reader.h"
#include "scanner/reader/frame_reader.h"
#include "scanner/symbol_reader.h"

#include <QFile>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>
#include <cstdio>
#include <ctime>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace {

struct Arguments {
    QString folder;
    bool fast = false, ablation = false, burst = false, misses = false;
    int budget = 0;
    int limit = 1 << 30;
};

struct Tally {
    int read = 0;
    int all = 0;

    double percent() const { return 100.0 * read / std::max(1, all); }
};

using Tallies = std::map<std::string, Tally>;
using Texts = std::map<std::string, scanner::HowRead>;

double cpuMilliseconds() {
    timespec now{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return static_cast<double>(now.tv_sec) * 1e3 + static_cast<double>(now.tv_nsec) * 1e-6;
}

/// ISO/IEC 7064 MOD 37-2 over ten characters, as the tag design has it.
bool isTag(const std::string& text) {
    static const std::string alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ*";
    if (text.size() != 10 || std::string("KBPCS").find(text[0]) == std::string::npos) return false;
    std::size_t sum = 0;
    for (const char c : text) {
        const auto value = alphabet.find(c);
        if (value == std::string::npos || std::string("ILOU*").find(c) != std::string::npos) return false;
        sum = (sum * 2 + value) % 37;
    }
    return sum == 1;
}

std::string bare(std::string text) {
    std::erase(text, '\x1d');
    return text;
}

Texts textsOf(const std::vector<scanner::SeenCode>& codes) {
    Texts texts;
    for (const auto& code : codes)
        texts.emplace(bare(code.text), code.howRead);
    return texts;
}

double percentile(std::vector<double> values, double part) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[std::min(values.size() - 1,
                           static_cast<std::size_t>(part * static_cast<double>(values.size())))];
}

/// What was read against what was there, over all frames.
class Score {
public:
    explicit Score(bool printMisses = false)
        : m_printMisses(printMisses) {}

    void add(const QJsonObject& frame, const Texts& read) {
        std::set<std::string> known;
        for (const QJsonValue& value : frame["tags"].toArray())
            addSymbol(frame, value.toObject(), read, known);
        for (const auto& [text, howRead] : read)
            if (!known.count(text)) {
                ++m_wrong;
                std::printf("wrong %s '%s' %s\n", qPrintable(frame["file"].toString()), text.c_str(),
                            scanner::nameOf(howRead));
            }
    }

    void print() const {
        print("recall ", m_strata);
        print("symbols", m_symbols);
        std::printf("read by:");
        for (const auto& [name, count] : m_howRead)
            std::printf("  %s %d", name.c_str(), count);
        std::printf("\nwrong %d; destroyed near misses read as printed %d\n", m_wrong, m_nearMisses);
    }

    const Tallies& strata() const { return m_strata; }
    int wrong() const { return m_wrong; }

private:
    void addSymbol(const QJsonObject& frame, const QJsonObject& tag, const Texts& read,
                   std::set<std::string>& known) {
        const std::string text = bare(tag["text"].toString().toStdString());
        const QString role = tag["role"].toString();
        known.insert(text);
        const auto found = read.find(text);
        const bool hit = found != read.end();
        if (role == "nearmiss") m_nearMisses += hit;
        if (role != "tag") return;
        const std::string symbol = tag["sym"].toString().toStdString();
        const std::string group = symbol.starts_with("GS1") ? "GS1" : symbol;
        for (Tally* tally :
             {&m_strata[frame["stratum"].toString().toStdString()], &m_strata["all"], &m_symbols[group]}) {
            tally->all += 1;
            tally->read += hit;
        }
        if (hit) ++m_howRead[scanner::nameOf(found->second)];
        if (!hit && m_printMisses) printMiss(frame, tag, text);
    }

    static void printMiss(const QJsonObject& frame, const QJsonObject& tag, const std::string& text) {
        const QJsonArray corner = tag["corners"].toArray()[0].toArray();
        std::printf("miss %s %s %s at %.0f,%.0f", qPrintable(frame["file"].toString()),
                    qPrintable(tag["sym"].toString()), text.c_str(), corner[0].toDouble(),
                    corner[1].toDouble());
        for (const char* key : {"genie_errors", "ppm_min", "tilt", "curve", "defocus", "glare", "drops"})
            std::printf(" %s=%.1f", key, tag[key].toDouble());
        for (const char* key : {"genie_ok", "dirt", "inverted"})
            std::printf(" %s=%d", key, tag[key].toBool());
        std::printf(" contrast=%.0f\n", tag["white"].toDouble() - tag["ink"].toDouble());
    }

    static void print(const char* title, const Tallies& tallies) {
        std::printf("%s:", title);
        for (const auto& [name, tally] : tallies)
            std::printf("  %s %.1f (%d/%d)", name.c_str(), tally.percent(), tally.read, tally.all);
        std::printf("\n");
    }

    bool m_printMisses;
    Tallies m_strata, m_symbols;
    std::map<std::string, int> m_howRead;
    int m_wrong = 0, m_nearMisses = 0;
};

class Times {
public:
    void add(int height, double milliseconds) { m_times[height].push_back(milliseconds); }
    void print() const {
        for (const auto& [height, list] : m_times)
            std::printf("%dp: median %.1f ms, p95 %.1f ms, worst %.1f ms over %zu frames\n", height,
                        percentile(list, 0.5), percentile(list, 0.95), percentile(list, 1.0), list.size());
    }
    double median(int height) const {
        return m_times.count(height) ? percentile(m_times.at(height), 0.5) : 0;
    }

private:
    std::map<int, std::vector<double>> m_times;
};

QImage load(const Arguments& arguments, const QJsonObject& frame) {
    return QImage(arguments.folder + "/" + frame["file"].toString())
        .convertToFormat(QImage::Format_Grayscale8);
}

scanner::GreyView viewOf(const QImage& image) {
    return {image.constBits(), image.width(), image.height(), static_cast<int>(image.bytesPerLine()), 1};
}

void scoreFrames(const Arguments& arguments, const QJsonArray& frames) {
    Score score(arguments.misses);
    Times times;
    for (const QJsonValue& value : frames) {
        const QImage image = load(arguments, value.toObject());
        scanner::ReadOptions options;
        options.rescue = !arguments.fast;
        options.budget = std::chrono::milliseconds(arguments.budget);
        options.isTag = isTag;
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
    std::vector<Score> scores(steps.size());
    std::vector<Times> own(steps.size()), total(steps.size());
    for (const QJsonValue& value : frames) {
        const QImage image = load(arguments, value.toObject());
        const double start = cpuMilliseconds();
        scanner::reader::FrameReader frame(scanner::copyOf(viewOf(image)), isTag);
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
        std::printf(" %d | %.1f | %.1f |\n", scores[i].wrong(), own[i].median(720), total[i].median(720));
    }
}

/// Each burst through a live reader of its own; a tag counts from the first frame in which it is told. A
/// guess counts when a second frame tells it.
void scoreBursts(const Arguments& arguments, const QJsonArray& frames) {
    std::map<int, Score> scores;
    Times times;
    int burst = -1;
    Texts known, guessed;
    scanner::LiveReader reader(isTag);
    const std::chrono::milliseconds budget(arguments.budget > 0 ? arguments.budget : 33);
    for (const QJsonValue& value : frames) {
        const QJsonObject frame = value.toObject();
        if (frame["burst"].toInt() != burst) {
            burst = frame["burst"].toInt();
            reader = scanner::LiveReader(isTag, budget, scanner::LiveReader::Clock::Thread);
            known.clear();
            guessed.clear();
        }
        const QImage image = load(arguments, frame);
        const double start = cpuMilliseconds();
        const auto codes = reader.read(viewOf(image));
        times.add(image.height(), cpuMilliseconds() - start);
        for (const auto& [text, howRead] : textsOf(codes))
            if (howRead != scanner::HowRead::Guessed || !guessed.emplace(text, howRead).second)
                known.emplace(text, howRead);
        scores[frame["k"].toInt()].add(frame, known);
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
        else if (word == "--limit" && i + 1 < argc)
            arguments.limit = std::atoi(argv[++i]);
        else
            arguments.folder = QString::fromLocal8Bit(argv[i]);
    }
    return arguments;
}

} // namespace

int main(int argc, char** argv) {
    const Arguments arguments = parse(argc, argv);
    QFile file(arguments.folder + "/truth.json");
    if (!file.open(QIODevice::ReadOnly)) {
        std::fprintf(stderr, "reader_score: no truth.json in %s\n", qPrintable(arguments.folder));
        return 2;
    }
    QJsonArray frames = QJsonDocument::fromJson(file.readAll()).object()["frames"].toArray();
    while (frames.size() > arguments.limit)
        frames.removeLast();
    if (arguments.ablation)
        scoreSteps(arguments, frames);
    else if (arguments.burst)
        scoreBursts(arguments, frames);
    else
        scoreFrames(arguments, frames);
    return 0;
}
