#pragma once

#include <QFont>

class QScreen;
class QString;

namespace app {

/// What a piece of text is for; each has its size (points).
enum class TextRole {
    BoatName, ///< 30, bold
    Outcome,  ///< 24, bold
    KitLine,  ///< 20
    Remark,   ///< 18
    Heading,  ///< 18, bold, over a list
    Footnote, ///< 14
    Code,     ///< 18, all characters of one width
};

/// Inter, or DejaVu Sans where it is missing; codes in DejaVu Sans Mono.
QFont fontOf(TextRole role);

/// One unit of space, in pixels of the window.
inline constexpr int spaceUnit = 8;

/// Height of a row that a finger presses: 15 mm on that screen (null: the first), and 57 to 120 pixels
/// whatever the screen says of itself, because many say something wrong.
int fingerHeight(const QScreen* screen = nullptr);

/// `K7Q24RMX1P` as it is shown: `K7Q2 4RMX 1P`. Other texts are grouped in the same way.
QString groupedCode(const QString& code);

} // namespace app
