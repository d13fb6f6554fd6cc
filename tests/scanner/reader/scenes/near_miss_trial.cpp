#include "tests/scanner/reader/scenes/near_miss_trial.h"

#include "scanner/reader/live_reader.h"
#include "tests/scanner/reader/pictures.h"
#include "tests/scanner/reader/reading_score.h"
#include "tests/scanner/reader/scenes/chance.h"

#include <algorithm>
#include <map>
#include <set>

namespace scenes {
namespace {

/// How the streams of a trial differ from those of another.
struct TrialKind {
    unsigned apart;   ///< seeds of two trials
    unsigned numbers; ///< by which the labels' numbers differ
    int mostLabels;
    LabelMaker (*labels)(unsigned firstNumber);
};

constexpr TrialKind joinedKind{100'003, 7, 2, joinedLabels}, destroyedKind{100'019, 11, 8, destroyedLabels},
    exchangedKind{100'043, 13, 2, clubLabels}, goodKind{100'057, 17, 3, clubLabels};

constexpr std::chrono::milliseconds budgetOf(Hurry hurry) {
    return hurry == Hurry::InTime ? pictures::frameBudget : std::chrono::minutes(10);
}

std::vector<scanner::SeenCode> readWithAllSteps(const scanner::GreyPicture& picture) {
    scanner::ReadOptions options;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = pictures::isTag;
    return scanner::readSymbols(picture.view(), options);
}

/// A trial's scene with the chance that it was made by, and a live reader that has seen nothing.
struct Trial {
    Trial(const TrialKind& kind, unsigned seed, unsigned number, Hurry inTime = Hurry::InTime)
        : own(seed * kind.apart + number)
        , random(own)
        , scene(makeScene(Lighting::Day, 800, 600, kind.mostLabels, kind.labels(own * kind.numbers), random))
        , hurry(inTime) {}

    scanner::GreyPicture frame(const Pose& hand) { return draw(scene, hand, random); }
    std::vector<scanner::SeenCode> readNext(const Pose& hand) { return reader.read(frame(hand).view()); }

    unsigned own;
    std::mt19937 random;
    Scene scene;
    Hurry hurry;
    scanner::LiveReader reader{pictures::isTag, budgetOf(hurry), scanner::LiveReader::Clock::Thread};
};

/// Texts that a program would act on after the frames, and guesses that only one frame told.
struct Told {
    std::set<std::string> believed, guessed;
    std::map<std::string, int> plain;

    void add(const std::vector<scanner::SeenCode>& codes) {
        for (const auto& [text, howRead] : scored::textsOf(codes)) {
            if (howRead != scanner::HowRead::Guessed) ++plain[text];
            if (howRead != scanner::HowRead::Guessed || !guessed.insert(text).second) believed.insert(text);
        }
    }
};

Told toldIn(Trial& trial, int frames) {
    Told told;
    for (const Pose& hand : heldByHand(frames, trial.random))
        told.add(trial.hurry == Hurry::InTime ? trial.readNext(hand) : readWithAllSteps(trial.frame(hand)));
    return told;
}

const Label* labelOf(const Scene& scene, const std::string& text) {
    for (const Placed& placed : scene.labels)
        if (placed.label.text == text || placed.label.joinedWith == text) return &placed.label;
    return nullptr;
}

std::string lineOf(const Scene& scene, unsigned seed, const std::string& text, const char* how) {
    const Label* label = labelOf(scene, text);
    return "seed " + std::to_string(seed) + ": told " + text + " (" + how + ")" +
           (label ? std::string(" of a ") + nameOf(label->kind) + " " + label->damage : " of nothing");
}

/// Each label gives its place to another of its kind.
void exchangeLabels(Trial& trial) {
    for (Placed& placed : trial.scene.labels) {
        const Label before = placed.label;
        placed.label =
            makeLabel(before.kind, trial.own * exchangedKind.numbers + 700'000 + below(999, trial.random));
        placed.label.ink = before.ink;
        placed.label.paper = before.paper;
        placed.label.negative = before.negative;
    }
}

} // namespace

Wrongs tryJoined(int streams, unsigned seed, int first, Hurry hurry) {
    Wrongs wrongs;
    for (int stream = first; stream < first + streams; ++stream) {
        Trial trial(joinedKind, seed, stream, hurry);
        const Told told = toldIn(trial, 5);
        wrongs.labels += static_cast<int>(trial.scene.labels.size());
        for (const std::string& text : told.believed)
            wrongs.wrong.push_back(
                lineOf(trial.scene, trial.own, text, told.plain.count(text) ? "plain" : "guessed"));
        wrongs.guessedOnce += static_cast<int>(told.guessed.size());
    }
    return wrongs;
}

Wrongs tryDestroyed(int labels, unsigned seed) {
    Wrongs wrongs;
    for (unsigned frame = 0; wrongs.labels < labels; ++frame) {
        Trial trial(destroyedKind, seed, frame);
        wrongs.labels += static_cast<int>(trial.scene.labels.size());
        for (const auto& [text, howRead] : scored::textsOf(readWithAllSteps(trial.frame({})))) {
            if (labelOf(trial.scene, text))
                ++wrongs.asPrinted;
            else
                wrongs.wrong.push_back(lineOf(trial.scene, trial.own, text, scanner::nameOf(howRead)));
        }
    }
    return wrongs;
}

Wrongs tryExchanged(int streams, unsigned seed, Hurry hurry) {
    Wrongs wrongs;
    for (int stream = 0; stream < streams; ++stream) {
        Trial trial(exchangedKind, seed, stream, hurry);
        int frame = 0;
        for (const Pose& hand : heldByHand(10, trial.random)) {
            if (frame == 5) exchangeLabels(trial);
            for (const auto& code : trial.readNext(hand))
                if (frame >= 5 && !labelOf(trial.scene, scored::bare(code.text)))
                    wrongs.wrong.push_back(
                        "frame " + std::to_string(frame) + " " +
                        lineOf(trial.scene, trial.own, code.text, scanner::nameOf(code.howRead)));
            ++frame;
        }
        wrongs.labels += static_cast<int>(trial.scene.labels.size());
    }
    return wrongs;
}

Good tryGood(int streams, unsigned seed) {
    Good good;
    for (int stream = 0; stream < streams; ++stream) {
        Trial trial(goodKind, seed, stream);
        const Told told = toldIn(trial, 5);
        for (const Placed& placed : trial.scene.labels) {
            const std::string& text = placed.label.text;
            ++good.labels;
            good.plain += told.plain.count(text) > 0;
            good.guessed += told.plain.count(text) == 0 && told.believed.count(text) > 0;
        }
    }
    return good;
}

} // namespace scenes
