#pragma once

#include <QWidget>

#include <functional>

namespace app {

/// Escape that nothing on the panel needs itself leaves it.
void leaveByEscape(QWidget& panel, std::function<void()> leave);

} // namespace app
