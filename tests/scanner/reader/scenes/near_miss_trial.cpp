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

constexpr int width = 800, height = 600;

scanner::LiveReader liveReader() {
    return scanner::LiveReader(pictures::isTag, std::chrono::milliseconds(33),
                               scanner::LiveReader::Clock::Thread);
}

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

} // namespace

Wrongs tryJoined(int streams, unsigned seed) {
    Wrongs wrongs;
    for (int stream = 0; stream < streams; ++stream) {
        const unsigned own = seed * 100'003 + static_cast<unsigned>(stream);
        std::mt19937 random(own);
        const Scene scene = makeScene(Lighting::Day, width, height, 2, joinedLabels(own * 7), random);
        auto reader = liveReader();
        Told told;
        for (const Pose& hand : heldByHand(5, random))
            told.add(reader.read(draw(scene, hand, random).view()));
        wrongs.labels += static_cast<int>(scene.labels.size());
        for (const std::string& text : told.believed)
            wrongs.wrong.push_back(lineOf(scene, own, text, told.plain.count(text) ? "plain" : "guessed"));
        wrongs.guessedOnce += static_cast<int>(told.guessed.size());
    }
    return wrongs;
}

Wrongs tryDestroyed(int labels, unsigned seed) {
    Wrongs wrongs;
    scanner::ReadOptions options;
    options.budget = std::chrono::milliseconds(0);
    options.isTag = pictures::isTag;
    for (unsigned frame = 0; wrongs.labels < labels; ++frame) {
        const unsigned own = seed * 100'019 + frame;
        std::mt19937 random(own);
        const Scene scene = makeScene(Lighting::Day, width, height, 8, destroyedLabels(own * 11), random);
        wrongs.labels += static_cast<int>(scene.labels.size());
        const scanner::GreyPicture picture = draw(scene, {}, random);
        for (const auto& [text, howRead] : scored::textsOf(scanner::readSymbols(picture.view(), options))) {
            if (labelOf(scene, text))
                ++wrongs.asPrinted;
            else
                wrongs.wrong.push_back(lineOf(scene, own, text, scanner::nameOf(howRead)));
        }
    }
    return wrongs;
}

Wrongs tryExchanged(int streams, unsigned seed) {
    Wrongs wrongs;
    for (int stream = 0; stream < streams; ++stream) {
        const unsigned own = seed * 100'043 + static_cast<unsigned>(stream);
        std::mt19937 random(own);
        Scene scene = makeScene(Lighting::Day, width, height, 2, clubLabels(own * 13), random);
        auto reader = liveReader();
        int frame = 0;
        for (const Pose& hand : heldByHand(10, random)) {
            if (frame == 5)
                for (Placed& placed : scene.labels) {
                    const Label before = placed.label;
                    placed.label = makeLabel(before.kind, own * 13 + 700'000 + below(999, random));
                    placed.label.ink = before.ink;
                    placed.label.paper = before.paper;
                    placed.label.negative = before.negative;
                }
            for (const auto& code : reader.read(draw(scene, hand, random).view()))
                if (frame >= 5 && !labelOf(scene, scored::bare(code.text)))
                    wrongs.wrong.push_back("frame " + std::to_string(frame) + " " +
                                           lineOf(scene, own, code.text, scanner::nameOf(code.howRead)));
            ++frame;
        }
        wrongs.labels += static_cast<int>(scene.labels.size());
    }
    return wrongs;
}

Good tryGood(int streams, unsigned seed) {
    Good good;
    for (int stream = 0; stream < streams; ++stream) {
        const unsigned own = seed * 100'057 + static_cast<unsigned>(stream);
        std::mt19937 random(own);
        const Scene scene = makeScene(Lighting::Day, width, height, 3, clubLabels(own * 17), random);
        auto reader = liveReader();
        Told told;
        for (const Pose& hand : heldByHand(5, random))
            told.add(reader.read(draw(scene, hand, random).view()));
        for (const Placed& placed : scene.labels) {
            const std::string& text = placed.label.text;
            ++good.labels;
            good.plain += told.plain.count(text) > 0;
            good.guessed += told.plain.count(text) == 0 && told.believed.count(text) > 0;
        }
    }
    return good;
}

} // namespace scenes
