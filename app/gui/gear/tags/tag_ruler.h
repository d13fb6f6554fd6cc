#pragma once

#include <QWidget>

#include <string>

namespace app {

/// One tag as it will be printed, with its measures: how wide the symbol is and how much paper it takes. The
/// proportions are right; its size on the screen is not the printed one, and it says so.
class TagRuler : public QWidget {
    Q_OBJECT

public:
    explicit TagRuler(QWidget* parent = nullptr);

    void setTag(const std::string& code, double symbolMm);

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    std::string m_code;
    double m_symbolMm = 30;
};

} // namespace app
