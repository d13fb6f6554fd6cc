#pragma once

#include "app/gui/widgets/choice_box.h"

namespace app {

/// A box of names that is also typed into: any part of a name finds it, and the list holds them all. What is
/// typed may be none of them.
class SearchBox : public ChoiceBox {
    Q_OBJECT

public:
    explicit SearchBox(QWidget* parent = nullptr);

    void setNames(const QStringList& names); ///< what is typed stays, and nothing is told

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    bool isOneOf(const QString& typed) const;
};

} // namespace app
