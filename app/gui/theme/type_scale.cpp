#include "app/gui/theme/type_scale.h"

#include <QFontDatabase>
#include <QGuiApplication>
#include <QScreen>
#include <QString>

#include <algorithm>
#include <cmath>

namespace app {
namespace {

QFont sized(const QString& family, int points, QFont::Weight weight) {
    QFont font(family, points, weight);
    font.setStyleStrategy(QFont::PreferAntialias);
    return font;
}

const QString& textFamily() {
    static const QString family =
        QFontDatabase::hasFamily("Inter") ? QString("Inter") : QString("DejaVu Sans");
    return family;
}

} // namespace

QFont fontOf(TextRole role) {
    switch (role) {
    case TextRole::BoatName:
        return sized(textFamily(), 30, QFont::Bold);
    case TextRole::Outcome:
        return sized(textFamily(), 24, QFont::Bold);
    case TextRole::KitLine:
        return sized(textFamily(), 20, QFont::Normal);
    case TextRole::Remark:
        return sized(textFamily(), 18, QFont::Normal);
    case TextRole::Heading:
        return sized(textFamily(), 18, QFont::Bold);
    case TextRole::Footnote:
        return sized(textFamily(), 14, QFont::Normal);
    case TextRole::Code:
        break;
    }
    return sized("DejaVu Sans Mono", 18, QFont::Normal);
}

int fingerHeight(const QScreen* screen) {
    if (!screen) screen = QGuiApplication::primaryScreen();
    const double dotsPerInch = screen ? screen->physicalDotsPerInchY() : 96.0;
    return static_cast<int>(std::clamp(std::ceil(dotsPerInch * 15.0 / 25.4), 57.0, 120.0));
}

QString groupedCode(const QString& code) {
    QString text = code;
    for (qsizetype at = 4; at < text.size(); at += 5)
        text.insert(at, ' ');
    return text;
}

} // namespace app
