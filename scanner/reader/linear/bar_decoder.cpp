#include "scanner/reader/linear/bar_decoder.h"

#include "scanner/reader/image/vectorised.h"
#include "scanner/reader/linear/code128.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <memory>
#include <utility>

namespace scanner::reader {
namespace {

constexpr int perModule = 3, samples = 11 * perModule;
constexpr int stop = 106, characterCount = 107, padded = 112;
constexpr std::array<double, 3> blurs{0.3, 0.65, 0.95}; // sigma in modules

/// Shapes of all characters, zero mean and unit length, sample by sample so that all are matched at once.
struct Shapes {
    alignas(32) float at[samples][padded];
    float starts[3][samples]; ///< the three start characters once more, each in a row
};

/// Lightness of a character at a place in modules: before it a space, after it a bar.
double lightAt(const char* widths, double place) {
    if (place < 0) return 1;
    bool bar = true;
    for (; *widths != 0; ++widths) {
        place -= *widths - '0';
        if (place < 0) return bar ? -1 : 1;
        bar = !bar;
    }
    return -1;
}

void addShape(Shapes& shapes, int character, const char* widths, double blur) {
    std::array<double, samples> shape{};
    double sum = 0;
    for (int i = 0; i < samples; ++i) {
        double value = 0, weight = 0;
        for (int k = -12; k <= 12; ++k) {
            const double away = k * 0.25 * blur;
            const double w = std::exp(-0.5 * (k * 0.25) * (k * 0.25));
            value += w * lightAt(widths, (i + 0.5) / perModule + away);
            weight += w;
        }
        shape[i] = value / weight;
        sum += shape[i];
    }
    double power = 0;
    for (double& value : shape) {
        value -= sum / samples;
        power += value * value;
    }
    for (int i = 0; i < samples; ++i)
        shapes.at[i][character] = static_cast<float>(shape[i] / std::sqrt(power));
    if (character >= 103 && character < 106)
        for (int i = 0; i < samples; ++i)
            shapes.starts[character - 103][i] = shapes.at[i][character];
}

std::unique_ptr<std::array<Shapes, blurs.size()>> makeShapes() {
    auto all = std::make_unique<std::array<Shapes, blurs.size()>>();
    for (std::size_t b = 0; b < blurs.size(); ++b) {
        for (int c = 0; c < 106; ++c)
            addShape((*all)[b], c, code128Widths[c], blurs[b]);
        addShape((*all)[b], stop, "233111", blurs[b]); // its last bar is the dark that follows
    }
    return all;
}

const Shapes& shapesOf(int blur) {
    static const auto shapes = makeShapes();
    return (*shapes)[static_cast<std::size_t>(blur)];
}

/// Half of the characters at once: as many sums as the processor has registers for.
SCANNER_VECTORISED void correlate(const Shapes& shapes, const float* window, float* scores) {
    static_assert(padded == 2 * 7 * 8);
    for (int first = 0; first < padded; first += padded / 2) {
        EightFloats sum0{}, sum1{}, sum2{}, sum3{}, sum4{}, sum5{}, sum6{};
        for (int i = 0; i < samples; ++i) {
            const auto* shape = reinterpret_cast<const EightFloats*>(&shapes.at[i][first]); // it is aligned
            sum0 += window[i] * shape[0];
            sum1 += window[i] * shape[1];
            sum2 += window[i] * shape[2];
            sum3 += window[i] * shape[3];
            sum4 += window[i] * shape[4];
            sum5 += window[i] * shape[5];
            sum6 += window[i] * shape[6];
        }
        auto* score = reinterpret_cast<EightFloats*>(scores + first); // so is this
        score[0] = sum0;
        score[1] = sum1;
        score[2] = sum2;
        score[3] = sum3;
        score[4] = sum4;
        score[5] = sum5;
        score[6] = sum6;
    }
}

/// Means of the profile between `samples` + 1 places, of which all lie inside.
SCANNER_VECTORISED void meansAt(const double* integral, double at, double step, float* out) {
    double sums[samples + 1];
    for (int i = 0; i <= samples; ++i) {
        const double x = at + i * step;
        const auto whole = static_cast<std::int32_t>(x);
        sums[i] = integral[whole] + (x - whole) * (integral[whole + 1] - integral[whole]);
    }
    const double perStep = 1 / step;
    for (int i = 0; i < samples; ++i)
        out[i] = static_cast<float>((sums[i + 1] - sums[i]) * perStep);
}

} // namespace

BarDecoder::BarDecoder(std::span<const float> profile)
    : m_sums(profile) {}

double BarDecoder::meanOf(double from, double to) const {
    return (m_sums.to(to) - m_sums.to(from)) / (to - from);
}

/// Eleven modules from `at`, zero mean and unit length; false when outside the profile or without any
/// contrast.
bool BarDecoder::window(double at, double module, float* out) const {
    if (!(at >= 0) || at + 11 * module > m_sums.count()) return false;
    meansAt(m_sums.data(), at, module / perModule, out);
    float sums[4]{}, squares[4]{};
    for (int i = 0; i + 4 < samples; i += 4)
        for (int k = 0; k < 4; ++k) {
            sums[k] += out[i + k];
            squares[k] += out[i + k] * out[i + k];
        }
    const double last = out[samples - 1];
    const double mean = (static_cast<double>(sums[0]) + sums[1] + sums[2] + sums[3] + last) / samples;
    const double power = static_cast<double>(squares[0]) + squares[1] + squares[2] + squares[3] +
                         last * last - samples * mean * mean;
    if (power < samples * 4) return false; // under 2 grey levels
    const float scale = static_cast<float>(1 / std::sqrt(power));
    for (int i = 0; i < samples; ++i)
        out[i] = (out[i] - static_cast<float>(mean)) * scale;
    return true;
}

/// Where the profile crosses its own mean over a twelfth of its length, falling and rising in turn; a falling
/// one first.
std::vector<double> BarDecoder::crossings() const {
    const double reach = m_sums.count() / 24.0;
    std::vector<double> edges;
    const auto contrast = [&](int i) {
        const double from = std::max(0.0, i - reach), to = std::min<double>(m_sums.count(), i + reach + 1);
        return m_sums.value(i) - meanOf(from, to);
    };
    double last = contrast(0);
    for (int i = 1; i < m_sums.count(); ++i) {
        const double now = contrast(i);
        const bool falls = last >= 0 && now < 0, rises = last < 0 && now >= 0;
        if (falls || (rises && !edges.empty())) edges.push_back(i - 0.5 + 1 + now / (last - now));
        last = now;
    }
    return edges;
}

/// What all three start characters share: two dark modules first, and light ones where the second and the
/// third space are.
bool BarDecoder::mayBeStart(double at, double module) const {
    if (at + 11 * module > m_sums.count()) return false;
    const double dark = meanOf(at, at + 2 * module);
    return meanOf(at + 4 * module, at + 6 * module) > dark &&
           meanOf(at + 9 * module, at + 11 * module) > dark;
}

BarDecoder::Start BarDecoder::startAt(double at, double module) const {
    Start start{at, module, -1, 0, 0};
    float seen[samples];
    if (at < 2 * module || !mayBeStart(at, module) || !window(at, module, seen)) return start;
    for (int blur = 0; blur < static_cast<int>(blurs.size()); ++blur)
        for (int character = 103; character < 106; ++character) {
            const float* row = shapesOf(blur).starts[character - 103];
            float score = 0;
            for (int i = 0; i < samples; ++i)
                score += seen[i] * row[i];
            if (score > start.score) start = {at, module, score, character, blur};
        }
    const double quiet = meanOf(at - 2 * module, at - 0.3 * module), mean = meanOf(at, at + 11 * module);
    if (quiet < mean) start.score -= 0.2;
    return start;
}

std::vector<BarDecoder::Start> BarDecoder::findStarts() const {
    constexpr double leastScore = 0.72;
    constexpr std::size_t most = 5,
                          fewestEdges = 18; // the shortest symbol has 25, of which blur may hide some
    std::vector<Start> starts;
    const auto consider = [&](double at, double module) {
        const Start start = startAt(at, module);
        if (start.score < leastScore) return;
        for (Start& other : starts)
            if (std::abs(other.at - at) < module && std::abs(other.module - module) < 0.06 * module) {
                if (other.score < start.score) other = start;
                return;
            }
        starts.push_back(start);
    };
    const auto edges = crossings();
    if (edges.size() < fewestEdges) return starts;
    for (std::size_t i = 0; i + 6 < edges.size() && edges[i] < 0.5 * m_sums.count(); i += 2)
        for (double factor : {0.97, 1.0, 1.03})
            consider(edges[i], factor * (edges[i + 6] - edges[i]) / 11);
    // Small bars merge, so their edges do not tell the module: a tag's length of 145 to 178 modules does,
    // with room for a label's margin and for tilt.
    const double length = edges.back() - edges.front();
    for (std::size_t i = 0; i < edges.size() && edges[i] < 0.25 * m_sums.count(); i += 2)
        for (double module = length / 240; module < length / 118; module *= 1.04)
            for (double shift : {0.0, -0.35})
                consider(edges[i] + shift * module, module);
    std::stable_sort(starts.begin(), starts.end(),
                     [](const Start& a, const Start& b) { return a.score > b.score; });
    if (starts.size() > most) starts.resize(most);
    return starts;
}

BarDecoder::Match BarDecoder::match(double at, double module, int blur) const {
    Match found;
    float seen[samples];
    alignas(32) float scores[padded];
    const auto consider = [&](double shift, double scale) {
        if (!window(at + shift * module, module * scale, seen)) return;
        correlate(shapesOf(blur), seen, scores);
        const int best = static_cast<int>(std::max_element(scores, scores + characterCount) - scores);
        const double score = scores[best] - 0.02 * std::abs(shift) - 0.1 * std::abs(scale - 1);
        if (score <= found.score) return;
        scores[best] = -2;
        const int second = static_cast<int>(std::max_element(scores, scores + characterCount) - scores);
        found = {best, second, score, scores[second], shift, scale};
    };
    constexpr std::array shifts{0.0, -0.25, 0.25, -0.5, 0.5};
    constexpr double hopeless = 0.4, clear = 0.9;
    for (double shift : shifts)
        consider(shift, 1);
    if (found.score < hopeless) return found;
    for (double scale : {0.97, 1.03})
        for (std::size_t i = 0; i < shifts.size() && found.score < clear; ++i)
            consider(shifts[i], scale);
    const Match coarse = found;
    for (double scale : {-0.015, 0.0, 0.015})
        for (double shift : {-0.12, 0.0, 0.12})
            if (scale != 0 || shift != 0) consider(coarse.shift + shift, coarse.scale + scale);
    return found;
}

/// Of all but the start character and that one.
double BarDecoder::weakestBut(std::span<const Match> matches, std::size_t one) {
    double weakest = 1;
    for (std::size_t i = 1; i < matches.size(); ++i)
        if (i != one) weakest = std::min(weakest, matches[i].score);
    return weakest;
}

void BarDecoder::follow(const Start& start, bool guess, std::vector<BarReading>& readings) const {
    constexpr double leastScore = 0.6;
    constexpr std::size_t longest = 60;
    BarReading reading;
    reading.first = start.at;
    reading.places.push_back(start.at);
    reading.characters.push_back(start.character);
    std::vector<Match> matches{{}};
    double at = start.at + 11 * start.module, module = start.module;
    for (;;) {
        const Match m = match(at, module, start.blur);
        if (m.score < leastScore || reading.characters.size() > longest) return;
        reading.places.push_back(at + m.shift * module);
        // Under tilt the modules grow or shrink steadily along the row: both errors of the last place tell
        // how.
        at += (m.shift + 11 * m.scale) * module;
        module *= 1 + 0.6 * (m.scale - 1) + 0.4 * m.shift / 11;
        if (m.best == stop) break;
        reading.characters.push_back(m.best);
        matches.push_back(m);
    }
    reading.last = at + 2 * module;
    reading.weakest = weakestBut(matches, 0);
    if (code128CheckAgrees(reading.characters)) {
        readings.push_back(std::move(reading));
        return;
    }
    if (!guess) return;
    reading.guessed = true;
    for (std::size_t i = 1; i < matches.size(); ++i) {
        if (matches[i].score - matches[i].secondScore > 0.15 || matches[i].second == stop) continue;
        const int kept = std::exchange(reading.characters[i], matches[i].second);
        reading.weakest = weakestBut(matches, i);
        if (code128CheckAgrees(reading.characters)) readings.push_back(reading);
        reading.characters[i] = kept;
    }
}

std::vector<BarReading> BarDecoder::read(bool guess) const {
    std::vector<BarReading> readings;
    if (m_sums.count() < 60) return readings;
    for (const Start& start : findStarts())
        follow(start, guess, readings);
    return readings;
}

} // namespace scanner::reader
