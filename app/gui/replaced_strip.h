#pragma once

#include <QFrame>

class QLabel;

namespace app {

/// Stands above every page when the file that is open is no longer at its path: from then on nothing is
/// recorded, whatever is pressed. GUI thread.
class ReplacedStrip : public QFrame {
    Q_OBJECT

public:
    explicit ReplacedStrip(QWidget* parent = nullptr);

signals:
    void openPressed(); ///< the file that is to be used
};

} // namespace app
