#pragma once

#include <QString>

#include <string>

namespace app {

/// The same text for Qt.
inline QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

} // namespace app
