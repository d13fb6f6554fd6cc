#include "app/gui/theme/dress.h"

#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/theme/window_style.h"

#include <QApplication>
#include <QPalette>
#include <QSettings>
#include <QString>

namespace app {
namespace {

const Palette*& worn() {
    static const Palette* palette = &paletteOf("light");
    return palette;
}

QPalette qtPaletteOf(const Palette& palette) {
    QPalette result;
    result.setColor(QPalette::Window, palette.ground);
    result.setColor(QPalette::Base, palette.ground);
    result.setColor(QPalette::AlternateBase, palette.panel);
    result.setColor(QPalette::Button, palette.panel);
    for (const auto role : {QPalette::WindowText, QPalette::Text, QPalette::ButtonText, QPalette::BrightText})
        result.setColor(role, palette.ink);
    result.setColor(QPalette::PlaceholderText, palette.quiet);
    // A field's words by the palette: with a colour of the sheet a hint would be half as strong.
    for (const auto role : {QPalette::Text, QPalette::ButtonText})
        result.setColor(QPalette::Disabled, role, palette.quiet);
    for (const auto role : {QPalette::Link, QPalette::LinkVisited})
        result.setColor(role, palette.found);
    result.setColor(QPalette::Highlight, palette.ink);
    result.setColor(QPalette::HighlightedText, palette.ground);
    result.setColor(QPalette::ToolTipBase, palette.panel);
    result.setColor(QPalette::ToolTipText, palette.ink);
    result.setColor(QPalette::Mid, palette.line);
    return result;
}

// Names in braces are put in from the palette; one sheet for all themes.
const char* const sheet = R"(
QWidget[role="panel"], QFrame[role="panel"] { background: {panel}; }
QLabel[role="quiet"] { color: {quiet}; font-size: 18pt; }
QLabel[role="remark"] { font-size: 18pt; }
QLabel[role="footnote"] { color: {quiet}; font-size: 14pt; }
QLabel[role="look"] { color: {look}; font-size: 18pt; }
QLabel[role="heading"] { font-size: 20pt; font-weight: bold; }
QLabel[role="boatName"] { font-size: 30pt; font-weight: bold; }
QLabel[role="phase"] { font-size: 20pt; color: {quiet}; }
QLabel[role="outcome"] { font-size: 24pt; font-weight: bold; }

QPushButton, QToolButton, QComboBox, QLineEdit, QSpinBox, QDoubleSpinBox, QPlainTextEdit {
    font-size: 18pt; min-height: {finger}px; border: 2px solid {line}; border-radius: 4px;
    padding: 0px 16px; margin: 1px; background: {ground};
}
QPushButton[role="usual"] { background: {ink}; color: {ground}; border-color: {ink}; font-weight: bold; }
QPushButton[role="plain"] { padding: 0px 8px; border-color: transparent; background: transparent; text-decoration: underline; }
QPushButton:hover, QToolButton:hover, QComboBox:hover, QLineEdit:hover, QSpinBox:hover, QDoubleSpinBox:hover,
QPlainTextEdit:hover { border-color: {ink}; }
QPushButton:pressed, QToolButton:pressed, QPushButton:checked, QToolButton:checked, QComboBox:on { background: {panel}; border-color: {ink}; }
QPushButton[role="usual"]:hover { background: {quiet}; border-color: {quiet}; }
QPushButton[role="usual"]:pressed, QPushButton[role="usual"]:checked { background: {ground}; color: {ink}; border-color: {ink}; }
QPushButton[role="plain"]:hover, QPushButton[role="plain"]:pressed { border-color: {line}; }
QPushButton:disabled, QToolButton:disabled { color: {quiet}; }
QPushButton:disabled, QToolButton:disabled, QComboBox:disabled, QLineEdit:disabled, QSpinBox:disabled,
QDoubleSpinBox:disabled, QPlainTextEdit:disabled { border: 2px dashed {line}; background: {panel}; }
QPushButton:focus, QToolButton:focus, QComboBox:focus, QLineEdit:focus, QSpinBox:focus, QDoubleSpinBox:focus,
QPlainTextEdit:focus { border: 3px solid {focus}; margin: 0px; }
QPushButton[role="usual"]:focus { border: 3px solid {focus}; }
QComboBox[isChosen="true"] { font-weight: bold; }
QComboBox::drop-down { border: none; width: 32px; }
QPushButton::menu-indicator { image: none; width: 0px; }
QComboBox { combobox-popup: 0; }
QListView { border: none; background: transparent; outline: none; }
QComboBox QAbstractItemView, QListView#offeredNames { background: {ground}; color: {ink}; border: 2px solid {line};
    selection-background-color: {ink}; selection-color: {ground}; outline: none; }
QComboBox QAbstractItemView::item, QListView#offeredNames::item { min-height: {finger}px; padding-left: 8px; color: {ink}; background: {ground}; }
QComboBox QAbstractItemView::item:hover, QComboBox QAbstractItemView::item:selected,
QListView#offeredNames::item:hover, QListView#offeredNames::item:selected { color: {ground}; background: {ink}; }
QCheckBox, QRadioButton { font-size: 18pt; min-height: {finger}px; spacing: 12px; padding: 0px 4px; border: 3px solid transparent; }
QCheckBox:focus, QRadioButton:focus { border: 3px solid {focus}; border-radius: 4px; }
QCheckBox::indicator { width: 28px; height: 28px; }
QRadioButton::indicator { width: 20px; height: 20px; border: 2px solid {ink}; border-radius: 12px; background: {ground}; }
QRadioButton::indicator:checked { width: 10px; height: 10px; border: 7px solid {ink}; }
QCheckBox:disabled, QRadioButton:disabled { color: {quiet}; }
QRadioButton::indicator:disabled { border-color: {quiet}; }
QProgressBar { border: 2px solid {line}; background: {ground}; min-height: 20px; }
QProgressBar::chunk { background: {found}; }
QScrollArea, QScrollArea > QWidget > QWidget { background: transparent; border: none; }
QScrollBar:vertical { background: {panel}; width: 20px; }
QScrollBar::handle:vertical { background: {line}; min-height: 48px; border-radius: 4px; margin: 2px; }
QScrollBar:horizontal { background: {panel}; height: 20px; }
QScrollBar::handle:horizontal { background: {line}; min-width: 48px; border-radius: 4px; margin: 2px; }
QScrollBar::add-line:horizontal, QScrollBar::sub-line:horizontal { width: 0px; }
QScrollBar::add-line, QScrollBar::sub-line { height: 0px; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QMenuBar { background: {panel}; font-size: 14pt; }
QMenuBar::item { padding: 4px 12px; background: transparent; }
QMenuBar::item:selected { background: {ink}; color: {ground}; }
QMenu { background: {ground}; border: 2px solid {line}; font-size: 16pt; }
QMenu::item { padding: 8px 32px 8px 32px; }
QMenu::item:selected { background: {ink}; color: {ground}; }
QMenu::item:disabled { color: {quiet}; }
QMenu::separator { height: 2px; background: {line}; margin: 4px 8px; }
QMenu::indicator { width: 22px; height: 22px; left: 6px; }
QSlider { min-height: 32px; border: 3px solid transparent; }
QSlider::groove:horizontal { height: 6px; background: {line}; border-radius: 3px; }
QSlider::handle:horizontal { width: 20px; margin: -8px 0px; background: {ink}; border-radius: 4px; }
QSlider::handle:horizontal:disabled { background: {line}; }
QSpinBox::up-button, QSpinBox::down-button, QDoubleSpinBox::up-button, QDoubleSpinBox::down-button { width: 0px; border: none; }
QSlider:focus { border: 3px solid {focus}; }
)";

} // namespace

QString styleSheetOf(const Palette& palette) {
    QString text = QString::fromUtf8(sheet);
    text.replace("{ink}", palette.ink.name());
    text.replace("{ground}", palette.ground.name());
    text.replace("{panel}", palette.panel.name());
    text.replace("{quiet}", palette.quiet.name());
    text.replace("{look}", palette.look.name());
    text.replace("{found}", palette.found.name());
    text.replace("{focus}", palette.focus.name());
    text.replace("{line}", palette.line.name());
    text.replace("{finger}", QString::number(fingerHeight()));
    return text;
}

void dress(QApplication& application, const Palette& palette) {
    worn() = &paletteOf(palette.name);
    application.setStyle(new WindowStyle);
    application.setFont(fontOf(TextRole::Remark));
    application.setPalette(qtPaletteOf(palette));
    application.setStyleSheet(styleSheetOf(palette));
}

const Palette& currentPalette() {
    return *worn();
}

bool isMotionReduced() {
    return QSettings().value("look/reduce-motion", false).toBool();
}

void reduceMotion(bool reduced) {
    QSettings().setValue("look/reduce-motion", reduced);
    for (const Qt::UIEffect effect : {Qt::UI_AnimateMenu, Qt::UI_FadeMenu, Qt::UI_AnimateCombo,
                                      Qt::UI_AnimateTooltip, Qt::UI_FadeTooltip})
        QApplication::setEffectEnabled(effect, !reduced);
}

} // namespace app
