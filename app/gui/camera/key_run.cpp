#include "app/gui/camera/key_run.h"

#include "core/tag/tag_code.h"

#include <QLineEdit>

#include <algorithm>

namespace app {
namespace {

/// Scanners leave 1 to 50 ms between keys, by their setting; whoever types 200 words a minute leaves 60.
constexpr int quickMs = 60;

} // namespace

bool isQuick(KeyTime before, KeyTime after) {
    // The clock of X11 has 32 bits: it begins anew every 49 days.
    if (before.stamp && after.stamp) return static_cast<quint32>(after.stamp - before.stamp) <= quickMs;
    return after.arrived - before.arrived <= quickMs;
}

bool KeyRun::isTagCode() const {
    return core::TagCode::exact(m_text.toStdString()).has_value();
}

void KeyRun::add(const QString& key, QWidget& receiver) {
    if (isEmpty()) {
        m_first = &receiver;
        for (QLineEdit* line : receiver.window()->findChildren<QLineEdit*>())
            if (asksForCode(line) && line->isVisible()) remember(*line);
    }
    remember(receiver);
    m_text += key;
}

void KeyRun::remember(QWidget& widget) {
    if (std::none_of(m_fields.begin(), m_fields.end(), [&](const auto& field) { return field.isOf(widget); }))
        m_fields.emplace_back(widget);
}

void KeyRun::putBack() const {
    for (const HeldField& field : m_fields)
        field.putBack();
}

void KeyRun::clear() {
    m_text.clear();
    m_first.clear();
    m_fields.clear();
}

} // namespace app
