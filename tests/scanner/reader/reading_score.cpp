#include "tests/scanner/reader/reading_score.h"

#include <QJsonArray>
#include <QJsonObject>

#include <algorithm>
#include <cstdio>
#include <set>

namespace scored {
namespace {

void printTallies(const char* title, const Tallies& tallies) {
    std::printf("%s:", title);
    for (const auto& [name, tally] : tallies)
        std::printf("  %s %.1f (%d/%d)", name.c_str(), tally.percent(), tally.read, tally.all);
    std::printf("\n");
}

void printMiss(const QJsonObject& frame, const QJsonObject& tag, const std::string& text) {
    const QJsonArray corner = tag["corners"].toArray()[0].toArray();
    std::printf("miss %s %s %s %s at %.0f,%.0f", qPrintable(frame["file"].toString()),
                qPrintable(frame["stratum"].toString()), qPrintable(tag["sym"].toString()), text.c_str(),
                corner[0].toDouble(), corner[1].toDouble());
    for (const char* key : {"genie_errors", "ppm_min", "tilt", "curve", "defocus", "glare", "drops"})
        std::printf(" %s=%.1f", key, tag[key].toDouble());
    for (const char* key : {"genie_ok", "dirt", "inverted"})
        std::printf(" %s=%d", key, tag[key].toBool());
    std::printf(" contrast=%.0f\n", tag["white"].toDouble() - tag["ink"].toDouble());
}

} // namespace

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

double Tally::percent() const {
    return 100.0 * read / std::max(1, all);
}

void ReadingScore::add(const QJsonObject& frame, const Texts& read) {
    std::set<std::string> known;
    for (const QJsonValue& value : frame["tags"].toArray()) {
        addSymbol(frame, value.toObject(), read);
        known.insert(bare(value["text"].toString().toStdString()));
    }
    for (const auto& [text, howRead] : read)
        if (!known.count(text)) {
            ++m_wrong;
            std::printf("wrong %s '%s' %s\n", qPrintable(frame["file"].toString()), text.c_str(),
                        scanner::nameOf(howRead));
        }
}

void ReadingScore::addSymbol(const QJsonObject& frame, const QJsonObject& tag, const Texts& read) {
    const std::string text = bare(tag["text"].toString().toStdString());
    const QString role = tag["role"].toString();
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

void ReadingScore::print() const {
    printTallies("recall ", m_strata);
    printTallies("symbols", m_symbols);
    std::printf("read by:");
    for (const auto& [name, count] : m_howRead)
        std::printf("  %s %d", name.c_str(), count);
    std::printf("\nwrong %d; destroyed near misses read as printed %d\n", m_wrong, m_nearMisses);
}

void ReadingTimes::print() const {
    for (const auto& [height, list] : m_times)
        std::printf("%dp: median %.1f ms, p95 %.1f ms, worst %.1f ms over %zu frames\n", height,
                    percentile(height, 0.5), percentile(height, 0.95), percentile(height, 1.0), list.size());
}

double ReadingTimes::percentile(int height, double part) const {
    const auto found = m_times.find(height);
    if (found == m_times.end()) return 0;
    std::vector<double> values = found->second;
    std::sort(values.begin(), values.end());
    return values[std::min(values.size() - 1,
                           static_cast<std::size_t>(part * static_cast<double>(values.size())))];
}

} // namespace scored
