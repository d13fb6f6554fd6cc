#include "app/gui/window_pictures.h"

#include "app/gui/theme/palette.h"

#include <gtest/gtest.h>

#include <QLinearGradient>
#include <QPainter>

#include <algorithm>
#include <cstdlib>

namespace {

int mostDifferent(const QImage& a, const QImage& b) {
    int most = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x) {
            const QRgb one = a.pixel(x, y);
            const QRgb other = b.pixel(x, y);
            most = std::max({most, std::abs(qRed(one) - qRed(other)), std::abs(qGreen(one) - qGreen(other)),
                             std::abs(qBlue(one) - qBlue(other))});
        }
    return most;
}

} // namespace

TEST(WindowPictures, tonesOfAThemeStayAsTheyAre) {
    const app::Palette& palette = app::paletteOf("light");
    QImage picture(100, 100, QImage::Format_RGB32);
    picture.fill(palette.ground);
    QPainter painter(&picture);
    painter.fillRect(10, 10, 20, 20, palette.look);
    painter.fillRect(50, 10, 20, 20, palette.found);
    painter.end();
    const QImage few = app::inFewColours(picture);
    EXPECT_EQ(few.format(), QImage::Format_Indexed8);
    EXPECT_EQ(mostDifferent(few, picture), 0);
}

TEST(WindowPictures, aPictureOfTheCameraDiffersByLessThanIsSeen) {
    QImage picture(256, 100, QImage::Format_RGB32);
    QLinearGradient light(0, 0, 256, 0);
    light.setColorAt(0, Qt::black);
    light.setColorAt(1, Qt::white);
    QPainter painter(&picture);
    painter.fillRect(picture.rect(), light);
    painter.end();
    EXPECT_LE(mostDifferent(app::inFewColours(picture), picture), 8);
    QImage other = picture;
    other.fill(Qt::red);
    EXPECT_GT(mostDifferent(other, picture), 200) << "the measure can tell";
}
