#include "app/paper/tag_scene.h"

#include "app/paper/tag_symbol.h"
#include "app/text/words.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QPolygonF>
#include <QTransform>

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>
#include <random>

namespace app {
namespace {

constexpr QSize pictureSize{1280, 720};
constexpr double cardWidth = zoneModules;    // modules
constexpr double cardHeight = cardWidth + 7; // with the characters beneath
constexpr double smallestModule = 3.3;       // pixels, at the far edge of a slanted tag
constexpr int viewedAtOnce = 8;

/// Spelt out, because the standard's distributions differ between libraries.
class Dice {
public:
    explicit Dice(std::uint64_t seed)
        : m_bits(seed) {}

    double between(double low, double high) {
        return low + (high - low) * static_cast<double>(m_bits() >> 11) * 0x1p-53;
    }
    std::size_t below(std::size_t count) {
        return static_cast<std::size_t>(between(0, 1) * static_cast<double>(count));
    }
    template <class List>
    void shuffle(List& list) {
        for (std::size_t left = list.size(); left > 1; --left)
            std::swap(list[left - 1], list[below(left)]);
    }

private:
    std::mt19937_64 m_bits;
};

/// A card turned by `turn`, tipped by `tip` about the axis at `axis`, seen from 150 modules away, `scale`
/// pixels a module.
struct Pose {
    QPointF centre;
    double turn = 0;
    double axis = 0;
    double tip = 0;
    double scale = 4;

    QPointF seen(QPointF module) const {
        constexpr double eye = 150;
        const QPointF at = module - QPointF(cardWidth / 2, cardHeight / 2);
        const double x = at.x() * std::cos(turn) - at.y() * std::sin(turn);
        const double y = at.x() * std::sin(turn) + at.y() * std::cos(turn);
        const double along = x * std::cos(axis) + y * std::sin(axis);
        const double across = y * std::cos(axis) - x * std::sin(axis);
        const double near = eye / (eye + across * std::sin(tip));
        const double tipped = across * std::cos(tip);
        return centre + QPointF(along * std::cos(axis) - tipped * std::sin(axis),
                                along * std::sin(axis) + tipped * std::cos(axis)) *
                            near * scale;
    }

    QPolygonF quad(const QRectF& modules) const {
        return QPolygonF({seen(modules.topLeft()), seen(modules.topRight()), seen(modules.bottomRight()),
                          seen(modules.bottomLeft())});
    }
    QPolygonF outline() const { return quad({0, 0, cardWidth, cardHeight}); }
};

double shortestSide(const QPolygonF& quad) {
    double shortest = 1e9;
    for (int i = 0; i < 4; ++i) {
        const QPointF side = quad[(i + 1) % 4] - quad[i];
        shortest = std::min(shortest, std::hypot(side.x(), side.y()));
    }
    return shortest;
}

Pose thrown(Dice& dice) {
    Pose pose;
    pose.centre = {dice.between(90, pictureSize.width() - 90), dice.between(90, pictureSize.height() - 90)};
    pose.turn = dice.between(0, 2 * std::numbers::pi);
    pose.axis = dice.between(0, std::numbers::pi);
    pose.tip = dice.between(-0.6, 0.6);
    pose.scale = dice.between(3.6, 5.0);
    const QRectF symbol(quietModules, quietModules, symbolModules, symbolModules);
    pose.scale *= std::max(1.0, smallestModule * symbolModules / shortestSide(pose.quad(symbol)));
    return pose;
}

bool overlaps(const QPolygonF& a, const QPolygonF& b) {
    return a.boundingRect().intersects(b.boundingRect()) && !a.intersected(b).isEmpty();
}

/// A place for a card that lies wholly in the picture and clear of `others`; empty when the heap has no room
/// left.
std::optional<Pose> clearOf(const std::vector<QPolygonF>& others, Dice& dice) {
    for (int attempt = 0; attempt < 200; ++attempt) {
        const Pose pose = thrown(dice);
        const QPolygonF outline = pose.outline();
        const auto covers = [&](const QPolygonF& other) { return overlaps(outline, other); };
        if (QRectF(QPointF(0, 0), pictureSize).contains(outline.boundingRect()) &&
            std::none_of(others.begin(), others.end(), covers))
            return pose;
    }
    return std::nullopt;
}

QPainterPath lettersOf(const QString& text, double baseline) {
    QFont mono(QStringLiteral("DejaVu Sans Mono"));
    mono.setStyleHint(QFont::Monospace);
    mono.setPixelSize(100);
    QPainterPath path;
    path.addText(0, 0, mono, text);
    const double scale = std::min(4.5 / 100, (cardWidth - 4) / path.boundingRect().width());
    QTransform place;
    place.translate((cardWidth - path.boundingRect().width() * scale) / 2, baseline);
    place.scale(scale, scale);
    return place.map(path);
}

void drawCard(QPainter& painter, const Pose& pose, const std::string& code) {
    QTransform flatToSeen;
    if (!QTransform::quadToQuad(QPolygonF(QRectF(0, 0, cardWidth, cardHeight)).mid(0, 4), pose.outline(),
                                flatToSeen))
        return;
    painter.save();
    painter.translate(4, 5);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0, 0, 0, 70)); // the shadow of a card that does not lie flat
    painter.drawPolygon(pose.outline());
    painter.restore();
    painter.save();
    painter.setTransform(flatToSeen);
    painter.fillRect(QRectF(0, 0, cardWidth, cardHeight), QColor(238, 236, 230));
    const QColor ink(28, 28, 30);
    drawSymbol(painter, {0, 0}, 1, code, ink);
    painter.fillPath(lettersOf(codeInWords(code), cardHeight - 3), ink);
    painter.restore();
}

QColor kitColour(Dice& dice) {
    static constexpr std::array<QRgb, 6> colours{0xffc7582a, 0xff2f5d86, 0xffb9a13c,
                                                 0xff4c5a4e, 0xff8a8f94, 0xff7a3b36};
    return QColor(colours[dice.below(colours.size())]);
}

/// The things that the tags are fixed to: only their colours and edges matter.
void drawKit(QPainter& painter, Dice& dice) {
    const QPointF at(dice.between(0, pictureSize.width()), dice.between(0, pictureSize.height()));
    painter.save();
    painter.translate(at);
    painter.rotate(dice.between(0, 360));
    painter.setPen(Qt::NoPen);
    painter.setBrush(kitColour(dice));
    const std::size_t shape = dice.below(3);
    if (shape == 0) painter.drawRoundedRect(QRectF(-320, -18, 640, 36), 18, 18); // a shaft
    if (shape == 1) painter.drawEllipse(QRectF(-130, -85, 260, 170));            // a float
    if (shape == 2) {                                                            // a coil of line
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(kitColour(dice), 9));
        for (int turn = 0; turn < 4; ++turn)
            painter.drawEllipse(QRectF(-90 + 11 * turn, -70 + 9 * turn, 180 - 22 * turn, 140 - 18 * turn));
    }
    painter.restore();
}

void drawGround(QPainter& painter, bool busy, Dice& dice) {
    const int tone = static_cast<int>(dice.between(95, 185));
    painter.fillRect(QRect(QPoint(), pictureSize), QColor(tone, tone - 5, tone - 20));
    if (!busy) return;
    for (int plank = 0; plank < 260; ++plank) { // the grain of a shed floor
        const int dark = static_cast<int>(dice.between(-45, 45)) + tone;
        painter.fillRect(QRectF(dice.between(-400, pictureSize.width()),
                                dice.between(0, pictureSize.height()), dice.between(150, 900),
                                dice.between(1, 7)),
                         QColor(std::clamp(dark, 0, 255), std::clamp(dark - 8, 0, 255),
                                std::clamp(dark - 25, 0, 255), 150));
    }
}

/// A window's light from one side, and the shadow of somebody who stands there.
void drawLight(QPainter& painter, Dice& dice) {
    QLinearGradient light(dice.between(0, 300), 0, dice.between(900, 1280), pictureSize.height());
    light.setColorAt(0, QColor(255, 250, 235, 40));
    light.setColorAt(1, QColor(0, 0, 10, 70));
    painter.fillRect(QRect(QPoint(), pictureSize), light);
    const double left = dice.between(0, 900);
    const double slant = dice.between(-250, 250);
    const double width = dice.between(150, 420);
    const QPolygonF shadow({QPointF(left, 0), QPointF(left + width, 0),
                            QPointF(left + width + slant, pictureSize.height()),
                            QPointF(left + slant, pictureSize.height())});
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(0, 0, 15, 95));
    painter.drawPolygon(shadow);
}

/// The grain of a sensor in poor light.
void addGrain(QImage& picture, Dice& dice) {
    for (int y = 0; y < picture.height(); ++y) {
        auto* row = reinterpret_cast<QRgb*>(picture.scanLine(y));
        for (int x = 0; x < picture.width(); ++x) {
            const int grain = static_cast<int>(dice.between(-6, 7));
            const auto with = [&](int channel) { return std::clamp(channel + grain, 0, 255); };
            row[x] = qRgb(with(qRed(row[x])), with(qGreen(row[x])), with(qBlue(row[x])));
        }
    }
}

struct Lying {
    Pose pose;
    std::string code;
};

QImage painted(const std::vector<Lying>& heap, bool busy, Dice& dice) {
    QImage picture(pictureSize, QImage::Format_RGB32);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    drawGround(painter, busy, dice);
    for (int thing = 0; thing < 7; ++thing)
        drawKit(painter, dice);
    for (const Lying& card : heap)
        drawCard(painter, card.pose, card.code);
    drawLight(painter, dice);
    painter.end();
    addGrain(picture, dice);
    return picture;
}

/// The tags in the order in which they get their turn in full view: first those that had none yet.
TagScene nextScene(std::vector<std::string>& waiting, const std::vector<std::string>& all, std::size_t atOnce,
                   bool busy, Dice& dice) {
    TagScene scene;
    std::vector<Lying> onTop, heap;
    std::vector<QPolygonF> kept;
    while (!waiting.empty() && onTop.size() < atOnce) {
        const auto pose = clearOf(kept, dice);
        if (!pose) break;
        kept.push_back(pose->outline());
        onTop.push_back({*pose, waiting.back()});
        scene.inFullView.push_back(waiting.back());
        waiting.pop_back();
    }
    for (int covered = 0; covered < 4; ++covered) {
        const std::string& code = all[dice.below(all.size())];
        if (std::find(scene.inFullView.begin(), scene.inFullView.end(), code) == scene.inFullView.end())
            heap.push_back({thrown(dice), code});
    }
    heap.insert(heap.end(), onTop.begin(), onTop.end());
    scene.picture = painted(heap, busy, dice);
    return scene;
}

} // namespace

std::vector<TagScene> tagScenes(const std::vector<core::TagLabel>& tags, std::uint64_t seed,
                                const std::function<void(double)>& progress) {
    if (tags.empty()) return {};
    Dice dice(seed);
    std::vector<std::string> all;
    for (const core::TagLabel& tag : tags)
        all.push_back(tag.code);
    std::vector<std::string> waiting = all;
    dice.shuffle(waiting);

    constexpr std::size_t fewest = 3;
    const std::size_t atOnce = std::clamp<std::size_t>((all.size() + fewest - 1) / fewest, 1, viewedAtOnce);
    std::vector<TagScene> scenes;
    while (!waiting.empty() || scenes.size() < fewest) {
        if (waiting.empty()) waiting.push_back(all[dice.below(all.size())]);
        scenes.push_back(nextScene(waiting, all, atOnce, scenes.size() % 2 == 1, dice));
        if (progress) progress(1 - static_cast<double>(waiting.size()) / static_cast<double>(all.size()));
    }
    return scenes;
}

} // namespace app
