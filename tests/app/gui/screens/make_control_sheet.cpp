// A picture of each kind of control in each of its states, in every theme: to be looked at after a change of
// the style sheet.
//     gui_control_sheet FOLDER

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "tests/support/wait_for.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QCheckBox>
#include <QDir>
#include <QGridLayout>
#include <QLineEdit>
#include <QMenu>
#include <QPainter>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QPushButton>
#include <QRadioButton>
#include <QScrollBar>
#include <QSlider>
#include <QSpinBox>
#include <QToolButton>

#include <functional>
#include <vector>

namespace {

enum class State { Normal, Hover, Pressed, Focused, Disabled, Checked };

const std::vector<std::pair<QString, State>> states{
    {"normal", State::Normal},    {"mouse", State::Hover},       {"pressed", State::Pressed},
    {"keyboard", State::Focused}, {"disabled", State::Disabled}, {"checked", State::Checked}};

using Make = std::function<QWidget*(QWidget*)>;

Make button(const char* role) {
    return [role](QWidget* in) {
        auto* made = app::wordsButton(in, "Sign", "button");
        made->setProperty("role", role);
        made->setCheckable(true);
        return made;
    };
}

template <class Button>
Make choice(const char* words) {
    return [words](QWidget* in) { return new Button(words, in); };
}

const std::vector<Make>& controls() {
    static const std::vector<Make> all{
        button(""),
        button("usual"),
        button("plain"),
        [](QWidget* in) {
            auto* made = new QToolButton(in);
            made->setText("Tool");
            made->setCheckable(true);
            return made;
        },
        [](QWidget* in) {
            auto* made = new app::ChoiceBox(in);
            made->addItems({"Bittern", "Dabchick"});
            return made;
        },
        [](QWidget* in) -> QWidget* { return app::wordsEdit(in, "edit", {}, "a hint"); },
        [](QWidget* in) {
            auto* made = new QLineEdit("written", in);
            return made;
        },
        [](QWidget* in) { return new QSpinBox(in); },
        [](QWidget* in) { return new QPlainTextEdit("words", in); },
        choice<QCheckBox>("required"),
        choice<QRadioButton>("points"),
        [](QWidget* in) {
            auto* made = new QProgressBar(in);
            made->setTextVisible(false);
            made->setValue(60);
            return made;
        },
        [](QWidget* in) { return new QSlider(Qt::Horizontal, in); },
    };
    return all;
}

/// As the mouse or the keyboard would.
void put(QWidget& control, State state) {
    if (state == State::Disabled) control.setEnabled(false);
    auto* pressed = qobject_cast<QAbstractButton*>(&control);
    if (pressed && state == State::Pressed) pressed->setDown(true);
    if (pressed && state == State::Checked) pressed->setChecked(true);
    if (state == State::Hover || state == State::Pressed) control.setAttribute(Qt::WA_UnderMouse);
}

/// The sheet without what has the keyboard, which only one control at a time can have.
QImage sheetIn(const app::Palette& palette) {
    app::dress(*qApp, palette);
    QWidget sheet;
    auto* grid = new QGridLayout(&sheet);
    std::vector<QWidget*> focused;
    for (std::size_t column = 0; column < states.size(); ++column) {
        grid->addWidget(app::wordsIn("heading", states[column].first, &sheet), 0, static_cast<int>(column));
        for (std::size_t row = 0; row < controls().size(); ++row) {
            QWidget* control = controls()[row](&sheet);
            control->setFixedWidth(200);
            control->setMaximumHeight(64);
            put(*control, states[column].second);
            if (states[column].second == State::Focused) focused.push_back(control);
            grid->addWidget(control, static_cast<int>(row) + 1, static_cast<int>(column));
        }
    }
    sheet.show();
    sheet.activateWindow();
    support::waitFor([&] { return sheet.isActiveWindow(); });
    QImage picture = sheet.grab().toImage();
    QPainter painter(&picture);
    for (QWidget* control : focused) {
        control->setFocus(Qt::TabFocusReason);
        painter.drawPixmap(control->pos(), control->grab());
    }
    return picture;
}

/// What opens, one beneath the other: a list to choose from, a menu, and a list of a page.
QImage openIn(const app::Palette& palette) {
    app::dress(*qApp, palette);
    app::ChoiceBox box;
    box.addItems({"Bittern", "Dabchick", "Grebe"});
    box.setCurrentIndex(1);
    box.show();
    box.showPopup();
    support::waitFor([&] { return box.view()->isVisible(); });
    QMenu menu;
    menu.addAction("mirror the picture")->setCheckable(true);
    menu.actions().front()->setChecked(true);
    menu.addAction("camera off");
    menu.addSeparator();
    menu.addAction("no camera is plugged in")->setEnabled(false);
    menu.popup({0, 0});
    menu.setActiveAction(menu.actions()[1]);
    const QImage list = box.view()->window()->grab().toImage(), items = menu.grab().toImage();
    QImage both(std::max(list.width(), items.width()), list.height() + items.height() + 16,
                QImage::Format_RGB32);
    both.fill(palette.panel);
    QPainter painter(&both);
    painter.drawImage(0, 0, list);
    painter.drawImage(0, list.height() + 16, items);
    return both;
}

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QApplication application(argc, argv);
    if (argc < 2 || !QDir().mkpath(argv[1])) return 2;
    bool isWritten = true;
    for (const app::Palette& palette : app::allPalettes()) {
        const QString folder = QString::fromLocal8Bit(argv[1]);
        isWritten &= sheetIn(palette).save(QStringLiteral("%1/controls-%2.png").arg(folder, palette.name));
        isWritten &=
            openIn(palette).save(QStringLiteral("%1/controls-open-%2.png").arg(folder, palette.name));
    }
    return isWritten ? 0 : 3;
}
