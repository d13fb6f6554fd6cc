#include "app/gui/widgets/said_label.h"

#include "app/text/sentences.h"
#include "app/text/words.h"

#include <QStyle>

namespace app {

SaidLabel::SaidLabel(const char* name, QWidget* parent)
    : QLabel(parent) {
    setObjectName(name);
    setWordWrap(true);
    setTextFormat(Qt::PlainText);
    say({});
}

void SaidLabel::say(const QString& sentence, bool toLookAt) {
    setText(sentence);
    setProperty("role", toLookAt ? "look" : "remark");
    style()->unpolish(this);
    style()->polish(this);
    // Its place stays when it says nothing, so that nothing beneath it moves.
    setMinimumHeight(fontMetrics().height());
}

void SaidLabel::sayError(const core::Error& error) {
    say(withCapital(errorLine(error)) + QLatin1Char('.'), true);
}

} // namespace app
