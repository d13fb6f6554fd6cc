#pragma once

class QLabel;
class QString;
class QWidget;

namespace app {

/// A label that wraps its words, in the type and tone of that role (see `styleSheetOf`).
QLabel* wordsIn(const char* role, const QString& text, QWidget* parent);

} // namespace app
