#pragma once

#include "app/gui/camera/held_field.h"

#include <QString>

#include <vector>

namespace app {

/// When a key was pressed, in milliseconds.
struct KeyTime {
    quint64 stamp = 0; ///< by the window system, which knows it however late the key is dealt with; 0: untold
    qint64 arrived = 0; ///< by the window's own clock, which never goes back
};

/// Whether a key came so soon after another that no person typed both.
bool isQuick(KeyTime before, KeyTime after);

/// Keys typed one after the other, and what stood in the fields before the first of them.
class KeyRun {
public:
    /// Longer texts typed at a scanner's speed are scans.
    static constexpr int leastOfScan = 6;

    bool isEmpty() const { return m_text.isEmpty(); }
    const QString& text() const { return m_text; }
    bool isTagCode() const; ///< exactly as it is printed, of whatever class
    bool isLongEnough() const { return m_text.size() >= leastOfScan; }
    QWidget* first() const { return m_first; } ///< who got the first key; null: gone since

    /// `receiver` gets the key, and is remembered before it does, with every field of its window that asks
    /// for a code: keys that belong to nobody are collected there.
    void add(const QString& key, QWidget& receiver);
    void putBack() const; ///< what stood in the fields
    void clear();

private:
    void remember(QWidget& widget);

    QString m_text;
    QPointer<QWidget> m_first;
    std::vector<HeldField> m_fields;
};

} // namespace app
