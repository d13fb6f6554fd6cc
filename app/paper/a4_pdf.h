#pragma once

#include <QByteArray>
#include <QFont>
#include <QString>

#include <functional>

class QPdfWriter;

/// A4 sheets as PDF, laid out in millimetres from the upper left corner of the paper.
namespace app::a4 {

constexpr int dotsPerInch = 1200;
constexpr double dotsPerMm = dotsPerInch / 25.4;
constexpr double pageWidth = 210, pageHeight = 297; ///< mm

/// A font whose letters are so high on the paper.
QFont font(const QString& family, double heightMm);

/// The bytes of a PDF whose first page `draw` begins on; it asks the writer for each page after that. No
/// margins are set: who draws keeps them.
QByteArray pdf(const QString& title, const std::function<void(QPdfWriter&)>& draw);

} // namespace app::a4
