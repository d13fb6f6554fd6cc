#pragma once

#include <QLabel>

namespace core {
struct Error;
}

namespace app {

/// What became of what was done last, in a sentence that stands where it was done.
class SaidLabel : public QLabel {
    Q_OBJECT

public:
    SaidLabel(const char* name, QWidget* parent);

    void say(const QString& sentence, bool toLookAt = false);
    void sayError(const core::Error& error);
};

} // namespace app
