// Streams of drawn frames with a truth.json, for reader_score --burst:
//   reader_scenes DIR [--streams 12] [--frames 30] [--dark] [--seed 1]
// The camera is held by hand. `--dark`: under one lamp before dawn.

#include "tests/scanner/reader/scenes/chance.h"
#include "tests/scanner/reader/scenes/stream.h"

#include <QDir>
#include <QFile>
#include <QImage>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <cstdio>
#include <cstdlib>
#include <string>

namespace {

struct Arguments {
    QString folder;
    int streams = 12, frames = 30;
    unsigned seed = 1;
    bool dark = false;
};

QJsonArray tagsOf(const scenes::Scene& scene, const scenes::Pose& hand) {
    QJsonArray tags;
    for (const scenes::Placed& placed : scene.labels) {
        QJsonArray corners;
        for (const scanner::Point& p : scenes::cornersOf(scene, placed, hand))
            corners.append(QJsonArray{p.x, p.y});
        tags.append(QJsonObject{{"role", QString::fromStdString(placed.label.role)},
                                {"sym", scenes::nameOf(placed.label.kind)},
                                {"text", QString::fromStdString(placed.label.text)},
                                {"corners", corners},
                                {"curve", placed.bend},
                                {"dirt", !placed.label.dirt.empty()},
                                {"inverted", placed.label.negative},
                                {"white", placed.label.paper},
                                {"ink", placed.label.ink}});
    }
    return tags;
}

bool writeStream(const Arguments& arguments, int stream, QJsonArray& frames) {
    std::mt19937 random(arguments.seed * 1000 + static_cast<unsigned>(stream));
    const auto lighting = arguments.dark ? scenes::Lighting::Dark : scenes::Lighting::Day;
    const scenes::Scene scene =
        scenes::makeScene(lighting, 1280, 720, 1 + static_cast<int>(scenes::below(4, random)),
                          scenes::clubLabels(scenes::below(1'000'000, random)), random);
    const auto hands = scenes::heldByHand(arguments.frames, random);
    for (int k = 0; k < arguments.frames; ++k) {
        const scanner::GreyPicture picture = scenes::draw(scene, hands[k], random);
        const QImage image(picture.pixels.data(), picture.width, picture.height, picture.width,
                           QImage::Format_Grayscale8);
        const QString name = QString("s%1_%2.jpg").arg(stream, 4, 10, QChar('0')).arg(k);
        if (!image.save(arguments.folder + "/" + name, nullptr, 88)) return false;
        frames.append(QJsonObject{{"file", name},
                                  {"stratum", arguments.dark ? "dark" : "day"},
                                  {"burst", stream},
                                  {"k", k},
                                  {"tags", tagsOf(scene, hands[k])}});
    }
    return true;
}

Arguments parse(int argc, char** argv) {
    Arguments arguments;
    for (int i = 1; i < argc; ++i) {
        const std::string word = argv[i];
        if (word == "--dark")
            arguments.dark = true;
        else if (word == "--streams" && i + 1 < argc)
            arguments.streams = std::atoi(argv[++i]);
        else if (word == "--frames" && i + 1 < argc)
            arguments.frames = std::atoi(argv[++i]);
        else if (word == "--seed" && i + 1 < argc)
            arguments.seed = static_cast<unsigned>(std::atoi(argv[++i]));
        else if (word.starts_with('-')) {
            std::fprintf(stderr, "reader_scenes: '%s' is no option of it, or wants a number\n", word.c_str());
            std::exit(2);
        } else
            arguments.folder = QString::fromLocal8Bit(argv[i]);
    }
    return arguments;
}

} // namespace

int main(int argc, char** argv) {
    const Arguments arguments = parse(argc, argv);
    QJsonArray frames;
    bool written = !arguments.folder.isEmpty() && QDir().mkpath(arguments.folder);
    for (int stream = 0; written && stream < arguments.streams; ++stream)
        written = writeStream(arguments, stream, frames);
    QFile truth(arguments.folder + "/truth.json");
    written = written && truth.open(QIODevice::WriteOnly) &&
              truth.write(QJsonDocument(QJsonObject{{"frames", frames}}).toJson()) > 0;
    if (written) return 0;
    std::fprintf(stderr, "reader_scenes: cannot write to the folder '%s'\n", qPrintable(arguments.folder));
    return 1;
}
