#pragma once

#include <QComboBox>
#include <QStringList>

namespace app {

/// A box to choose from, with its arrow drawn in the theme's ink: a style sheet takes the style's own away.
class ChoiceBox : public QComboBox {
    Q_OBJECT

public:
    explicit ChoiceBox(QWidget* parent = nullptr);

    /// As wide as there is room, at least for so many letters: long names are cut, not the page.
    void takeRoom(int leastLetters);

    void showPopup() override;
    QSize sizeHint() const override;
    QSize minimumSizeHint() const override;

protected:
    bool event(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void paintChosen();
};

/// Offers `all` (data: empty) and then the names (data: the same), each once, in order; keeps what was chosen
/// where it is still offered.
void fillBox(QComboBox& box, const QString& all, QStringList names);

} // namespace app
