#pragma once

#include <QString>
#include <QStringList>

#include <string>
#include <vector>

namespace app {

/// The same text for Qt.
inline QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

inline QStringList texts(const std::vector<std::string>& utf8) {
    QStringList list;
    for (const std::string& each : utf8)
        list << text(each);
    return list;
}

} // namespace app
