// Recall of the reader on a folder of frames with a truth.json: by stratum, by symbol, wrong texts, time.
//   reader_score DIR [--fast] [--budget MS] [--misses] [--limit N]

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

struct Tally {
    int read = 0;
    int all = 0;
};

struct Arguments {
    QString folder;
    bool fast = false;
    bool misses = false;
    int budget = 0;
    int limit = 1 << 30;
};

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
    for (char c : text) {
        const auto value = alphabet.find(c);
        if (value == std::string::npos || std::string("ILOU*").find(c) != std::string::npos) return false;
        sum = (sum * 2 + value) % 37;
    }
    return sum == 1;
}

double percentile(std::vector<double> values, double part) {
    if (values.empty()) return 0;
    std::sort(values.begin(), values.end());
    return values[std::min(values.size() - 1,
                           static_cast<std::size_t>(part * static_cast<double>(values.size())))];
}

void print(const char* title, const std::map<std::string, Tally>& tallies) {
    std::printf("%s:", title);
    for (const auto& [name, tally] : tallies)
        std::printf("  %s %.1f (%d/%d)", name.c_str(), 100.0 * tally.read / std::max(1, tally.all),
                    tally.read, tally.all);
    std::printf("\n");
}

std::string symbolGroup(const std::string& symbol) {
    return symbol.starts_with("GS1") ? "GS1" : symbol;
}

std::string bare(std::string text) {
    std::erase(text, '\x1d');
    return text;
}

Arguments parse(int argc, char** argv) {
    Arguments arguments;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--fast")
            arguments.fast = true;
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
    std::map<std::string, Tally> strata, symbols, steps;
    std::map<std::string, std::vector<double>> times;
    int wrong = 0, frames = 0, nearmiss = 0;
    for (const QJsonValue& value : QJsonDocument::fromJson(file.readAll()).object()["frames"].toArray()) {
        if (frames++ >= arguments.limit) break;
        const QJsonObject frame = value.toObject();
        const QImage image = QImage(arguments.folder + "/" + frame["file"].toString())
                                 .convertToFormat(QImage::Format_Grayscale8);
        scanner::ReadOptions options;
        options.rescue = !arguments.fast;
        options.budget = std::chrono::milliseconds(arguments.budget);
        options.isTag = isTag;
        const scanner::GreyView view{image.constBits(), image.width(), image.height(),
                                     static_cast<int>(image.bytesPerLine()), 1};
        const double start = cpuMilliseconds();
        const auto codes = scanner::readSymbols(view, options);
        times[std::to_string(image.height())].push_back(cpuMilliseconds() - start);

        if (arguments.misses)
            std::printf("time %s %dp %.1f ms\n", qPrintable(frame["file"].toString()), image.height(),
                        times[std::to_string(image.height())].back());

        std::map<std::string, scanner::HowRead> read;
        for (const auto& code : codes)
            read.emplace(bare(code.text), code.howRead);
        std::set<std::string> known;
        for (const QJsonValue& tagValue : frame["tags"].toArray()) {
            const QJsonObject tag = tagValue.toObject();
            const std::string text = bare(tag["text"].toString().toStdString());
            const std::string role = tag["role"].toString().toStdString();
            known.insert(text);
            if (role == "nearmiss") nearmiss += static_cast<int>(read.count(text));
            if (role != "tag") continue;
            const bool hit = read.count(text) > 0;
            if (hit) ++steps[scanner::nameOf(read[text])].read;
            for (auto* tally : {&strata[frame["stratum"].toString().toStdString()], &strata["all"],
                                &symbols[symbolGroup(tag["sym"].toString().toStdString())]}) {
                tally->all += 1;
                tally->read += hit;
            }
            if (!hit && arguments.misses)
                std::printf("miss %s %s %s ok=%d ge=%d ppm=%.1f tilt=%.0f curve=%.2f dirt=%d defocus=%.1f "
                            "contrast=%.0f inv=%d glare=%.2f drops=%d motion=%.1f rot=%.0f at %.0f,%.0f\n",
                            qPrintable(frame["file"].toString()), qPrintable(tag["sym"].toString()),
                            text.c_str(), tag["genie_ok"].toBool(), tag["genie_errors"].toInt(),
                            tag["ppm_min"].toDouble(), tag["tilt"].toDouble(), tag["curve"].toDouble(),
                            tag["dirt"].toBool(), tag["defocus"].toDouble(),
                            tag["white"].toDouble() - tag["ink"].toDouble(), tag["inverted"].toBool(),
                            tag["glare"].toDouble(), tag["drops"].toInt(), frame["motion_px"].toDouble(),
                            tag["rot"].toDouble(), tag["corners"].toArray()[0].toArray()[0].toDouble(),
                            tag["corners"].toArray()[0].toArray()[1].toDouble());
        }
        for (const auto& code : codes)
            if (!known.count(bare(code.text))) {
                ++wrong;
                std::printf("wrong %s %s '%s' %s\n", qPrintable(frame["file"].toString()),
                            scanner::nameOf(code.symbology), code.text.c_str(),
                            scanner::nameOf(code.howRead));
            }
    }
    print("recall", strata);
    print("symbol", symbols);
    print("step", steps);
    std::printf("wrong %d, near misses read as printed %d\n", wrong, nearmiss);
    for (const auto& [height, list] : times)
        std::printf("%sp: median %.1f ms, p95 %.1f ms, worst %.1f ms over %zu frames\n", height.c_str(),
                    percentile(list, 0.5), percentile(list, 0.95), percentile(list, 1.0), list.size());
    return 0;
}
