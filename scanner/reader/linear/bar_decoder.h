#pragma once

#include "scanner/reader/linear/profile_sums.h"

#include <span>
#include <vector>

namespace scanner::reader {

/// Symbol characters of a Code 128 seen in a profile, start to check character.
struct BarReading {
    std::vector<int> characters;
    double first = 0, last = 0; ///< where the bars begin and end, as indices of the profile
    std::vector<double> places; ///< where each character begins, and last the stop character, as such indices
    /// How much the least alike of its characters is like its shape, 0 to 1; but for one that was replaced.
    double weakest = 1;
    bool guessed = false; ///< one character was replaced by its next best to satisfy the check character
};

/// Reads Code 128 from left to right by matching each character's shape at the width that the last ones had;
/// so it needs no threshold and bears blur.
class BarDecoder {
public:
    explicit BarDecoder(std::span<const float> profile);

    /// Readings whose check character agrees, from the most likely starts; with `guess` also those that agree
    /// after one character is replaced by its next best.
    std::vector<BarReading> read(bool guess) const;

private:
    struct Start {
        double at, module, score;
        int character;
        int blur;
    };
    struct Match {
        int best = -1, second = -1;
        double score = -1, secondScore = -1;
        double shift = 0, scale = 1;
    };

    double meanOf(double from, double to) const;
    bool window(double at, double module, float* out) const;
    std::vector<Start> findStarts() const;
    bool mayBeStart(double at, double module) const;
    Start startAt(double at, double module) const;
    std::vector<double> crossings() const;
    Match match(double at, double module, int blur) const;
    static double weakestBut(std::span<const Match> matches, std::size_t one);
    void follow(const Start& start, bool guess, std::vector<BarReading>& readings) const;

    ProfileSums m_sums;
};

} // namespace scanner::reader
