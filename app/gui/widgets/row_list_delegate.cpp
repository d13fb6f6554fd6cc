#include "app/gui/widgets/row_list_delegate.h"

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/row_list_model.h"

#include <QEvent>
#include <QFontMetrics>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPointer>
#include <QRegularExpression>
#include <QRegularExpressionValidator>
#include <QStyle>

#include <algorithm>

namespace app {
namespace {

constexpr int lineMarkColumn = 44;
constexpr int lineMargin = spaceUnit;
constexpr int leastTitle = 160; ///< a title with less beside it has its aside beneath it

const ListRow rowAt(const QModelIndex& index) {
    return index.data(RowListModel::RowRole).value<ListRow>();
}

/// What is allowed of a number and whether what is typed is, beside the field that it is typed into.
class NumberWords : public QLabel {
public:
    NumberWords(QLineEdit& edit, const NumberEntry& entry)
        : QLabel(edit.parentWidget())
        , m_edit(&edit)
        , m_entry(entry) {
        setObjectName("rowNumberWords");
        setTextFormat(Qt::PlainText);
        setWordWrap(true);
        setMargin(spaceUnit);
        connect(&edit, &QLineEdit::textChanged, this, [this] { tell(); });
        connect(&edit, &QObject::destroyed, this, &QObject::deleteLater);
        edit.installEventFilter(this);
        tell();
    }

    /// Beneath the field, or above where there is no room.
    void place() {
        if (!m_edit) return;
        const QRect field = m_edit->geometry();
        const QRect room = parentWidget()->rect();
        const int height = heightForWidth(room.width());
        const bool isBeneath = field.bottom() + height <= room.bottom();
        setGeometry(0, isBeneath ? field.bottom() + 1 : field.top() - height, room.width(), height);
        setVisible(!text().isEmpty() && m_edit->isVisible());
        raise();
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        // Of the field alone, and perhaps of what is left of it: the number is taken or left.
        if (event->type() == QEvent::Hide) hide();
        return QLabel::eventFilter(watched, event);
    }
    void paintEvent(QPaintEvent* event) override {
        QPainter painter(this);
        painter.setPen(currentPalette().line);
        painter.setBrush(currentPalette().panel);
        painter.drawRect(rect().adjusted(0, 0, -1, -1));
        painter.end();
        QLabel::paintEvent(event);
    }

private:
    void tell() {
        bool isNumber = false;
        const double number = m_edit->text().trimmed().replace(',', '.').toDouble(&isNumber);
        const bool isOut = isNumber && !m_entry.holds(number);
        const QString allowed = m_entry.range.isEmpty()
                                    ? RowListDelegate::tr("In %1; no range is given.").arg(m_entry.unit)
                                    : RowListDelegate::tr("Allowed: %1.").arg(m_entry.range);
        setText(isOut ? RowListDelegate::tr("▲ %1 is out of range. Allowed: %2. Enter records it all the "
                                            "same, Escape leaves it.")
                            .arg(m_edit->text().trimmed(), m_entry.range)
                      : allowed);
        setProperty("role", isOut ? "look" : "remark");
        style()->unpolish(this);
        style()->polish(this);
        m_edit->setAccessibleDescription(text());
        place();
    }

    QPointer<QLineEdit> m_edit;
    NumberEntry m_entry;
};

QFont asideFont(const ListRow& row) {
    if (row.isHeading) return fontOf(TextRole::Heading);
    return fontOf(row.asideIsCode ? TextRole::Code : TextRole::KitLine);
}

} // namespace

/// Where the parts of a line stand in its rectangle.
struct RowListDelegate::Layout {
    QRect mark;
    QRect title;
    QRect aside;
    QRect remark;
    int height = 0;
};

RowListDelegate::RowListDelegate(QObject* parent)
    : QStyledItemDelegate(parent) {}

RowListDelegate::Layout RowListDelegate::layOut(const ListRow& row, const QRect& rect) const {
    const bool heading = row.isHeading;
    const QFontMetrics titleMetrics(fontOf(heading ? TextRole::Heading : TextRole::KitLine));
    const QFontMetrics asideMetrics(asideFont(row));
    const QFontMetrics remarkMetrics(fontOf(TextRole::Remark));
    const int left = rect.left() + lineMargin + (heading ? 0 : lineMarkColumn);
    const int right = rect.right() - lineMargin;
    const int asideWidth = row.aside.isEmpty() ? 0 : asideMetrics.horizontalAdvance(row.aside) + 2;
    const bool isAsideBeneath =
        asideWidth > 0 && right - left - asideWidth - 2 * lineMargin <
                              std::min(leastTitle, titleMetrics.horizontalAdvance(row.title));
    const int titleWidth = std::max(80, right - left - (isAsideBeneath ? 0 : asideWidth + 2 * lineMargin));
    const int above = heading ? 2 * spaceUnit : spaceUnit / 2;

    Layout layout;
    const QRect title = titleMetrics.boundingRect(QRect(0, 0, titleWidth, 1000), Qt::TextWordWrap, row.title);
    int height = above + title.height();
    layout.title = QRect(left, rect.top() + above, titleWidth, title.height());
    layout.aside = QRect(right - asideWidth, rect.top() + (isAsideBeneath ? height : above), asideWidth + 2,
                         titleMetrics.height());
    if (isAsideBeneath) height += titleMetrics.height();
    layout.mark = QRect(rect.left() + lineMargin, rect.top() + above, lineMarkColumn - 2 * lineMargin,
                        titleMetrics.height());
    if (!row.remark.isEmpty()) {
        const QRect remark =
            remarkMetrics.boundingRect(QRect(0, 0, right - left, 4000), Qt::TextWordWrap, row.remark);
        layout.remark = QRect(left, rect.top() + height, right - left, remark.height());
        height += remark.height();
    }
    height += spaceUnit / 2;

    layout.height = heading ? height : std::max(height, m_fingerHeight);
    const int down = (layout.height - height) / 2;
    for (QRect* part : {&layout.mark, &layout.title, &layout.aside, &layout.remark})
        part->translate(0, down);
    return layout;
}

void RowListDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option,
                            const QModelIndex& index) const {
    const ListRow row = rowAt(index);
    const Palette& palette = currentPalette();
    const Layout layout = layOut(row, option.rect);
    const bool heading = row.isHeading;
    painter->save();
    if (option.state & QStyle::State_MouseOver && row.isLitByMouse)
        painter->fillRect(option.rect, palette.panel);
    if (!heading) {
        const int side = 20;
        const QRectF box(layout.mark.left(), layout.mark.center().y() - side / 2.0 + 1, side, side);
        paintMark(*painter, row.mark, box, toneOf(row.mark, palette));
    }
    QFont titleFont = fontOf(heading ? TextRole::Heading : TextRole::KitLine);
    titleFont.setUnderline(index.data(RowListModel::JustChangedRole).toBool());
    painter->setFont(titleFont);
    painter->setPen(heading ? palette.quiet : palette.ink);
    painter->drawText(layout.title, Qt::TextWordWrap, row.title);
    painter->setFont(asideFont(row));
    painter->setPen(heading || row.asideIsCode || row.mark == Mark::StillToFind ? palette.quiet
                                                                                : palette.ink);
    painter->drawText(layout.aside, Qt::AlignRight | Qt::AlignVCenter | Qt::TextDontClip, row.aside);
    painter->setFont(fontOf(TextRole::Remark));
    painter->setPen(row.remarkIsLook ? palette.look : palette.quiet);
    painter->drawText(layout.remark, Qt::TextWordWrap, row.remark);
    // The ring stands for the keyboard's place; a mouse leaves none behind.
    if (option.state & QStyle::State_HasFocus) {
        painter->setPen(QPen(palette.focus, 3, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
        painter->drawRect(option.rect.adjusted(2, 2, -3, -3));
    }
    painter->restore();
}

QSize RowListDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const int width = option.rect.width() > 0 ? option.rect.width() : 400;
    return {width, layOut(rowAt(index), QRect(0, 0, width, 0)).height};
}

QWidget* RowListDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                       const QModelIndex& index) const {
    static const QRegularExpression number(QStringLiteral("-?[0-9]{0,6}([.,][0-9]{0,3})?"));
    const ListRow row = rowAt(index);
    auto* edit = new QLineEdit(parent);
    edit->setObjectName("rowNumberEdit");
    edit->setValidator(new QRegularExpressionValidator(number, edit));
    edit->setAlignment(Qt::AlignRight);
    const QString unit = row.number ? row.number->unit : QString();
    edit->setPlaceholderText(unit);
    edit->setAccessibleName(tr("%1 in %2, %3").arg(row.title, unit, row.remark));
    if (row.number) new NumberWords(*edit, *row.number); // goes with the field
    return edit;
}

void RowListDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* edit = static_cast<QLineEdit*>(editor);
    edit->setText(index.data(Qt::EditRole).toString());
    edit->selectAll();
}

void RowListDelegate::setModelData(QWidget* editor, QAbstractItemModel* model,
                                   const QModelIndex& index) const {
    model->setData(index, static_cast<QLineEdit*>(editor)->text(), Qt::EditRole);
}

void RowListDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                           const QModelIndex&) const {
    const int width = 180;
    editor->setGeometry(option.rect.right() - width, option.rect.top(), width, option.rect.height());
    auto* words = static_cast<NumberWords*>(editor->parentWidget()->findChild<QLabel*>("rowNumberWords"));
    if (words)
        QMetaObject::invokeMethod(
            words, [words] { words->place(); }, Qt::QueuedConnection);
}

} // namespace app
