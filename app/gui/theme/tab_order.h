#pragma once

class QWidget;

namespace app {

/// Tab goes through the page as its layouts stand, whatever the order in which its parts were made; parts
/// that are hidden have their place too.
void tabAsLaidOut(QWidget& page);

} // namespace app
