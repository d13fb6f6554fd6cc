#pragma once

#include "scanner/seen_code.h"

#include <map>
#include <string>
#include <vector>

class QJsonObject;

namespace scored {

/// What a reader told of a frame: each text, without FNC1, and how it was read.
using Texts = std::map<std::string, scanner::HowRead>;

/// FNC1 is left out: readers and encoders differ in where they tell it.
std::string bare(std::string text);
Texts textsOf(const std::vector<scanner::SeenCode>& codes);

struct Tally {
    int read = 0;
    int all = 0;

    double percent() const;
};

using Tallies = std::map<std::string, Tally>;

/// What was read against what was there, over many frames. Only symbols whose role is "tag" are to be read;
/// a text that is on no symbol of its frame is wrong.
class ReadingScore {
public:
    /// `printMisses`: each tag that was not read is printed with what made it hard.
    explicit ReadingScore(bool printMisses = false)
        : m_printMisses(printMisses) {}

    /// Wrong texts are printed at once.
    void add(const QJsonObject& frame, const Texts& read);
    void print() const;

    const Tallies& strata() const { return m_strata; }   ///< "all" and each stratum
    const Tallies& symbols() const { return m_symbols; } ///< "QR", "DM", "C128", "GS1"
    int wrong() const { return m_wrong; }
    int nearMisses() const { return m_nearMisses; } ///< destroyed symbols read as what was printed on them

private:
    void addSymbol(const QJsonObject& frame, const QJsonObject& tag, const Texts& read);

    bool m_printMisses;
    Tallies m_strata, m_symbols;
    std::map<std::string, int> m_howRead;
    int m_wrong = 0, m_nearMisses = 0;
};

/// Processor times by the height of the pictures.
class ReadingTimes {
public:
    void add(int height, double milliseconds) { m_times[height].push_back(milliseconds); }
    void print() const;
    /// `part`: 0.5 the median, 0.95, 1 the worst; 0 milliseconds when there is no such picture.
    double percentile(int height, double part) const;

private:
    std::map<int, std::vector<double>> m_times;
};

} // namespace scored
