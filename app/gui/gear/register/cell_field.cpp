#include "app/gui/gear/register/cell_field.h"

#include "app/gui/camera/held_field.h"
#include "app/gui/gear/register/written_cell.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/search_box.h"
#include "app/text/register_words.h"
#include "app/text/text.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include <algorithm>

namespace app {
namespace {

QByteArray nameOf(const core::Column& column) {
    return "cell_" + QByteArray(column.name.data(), static_cast<qsizetype>(column.name.size()));
}

/// Words, numbers, steps: whatever is typed.
class LineField : public CellField {
public:
    LineField(const core::Sheet& sheet, const core::Column& column, QWidget* parent)
        : CellField(sheet, column, parent)
        , m_edit(new QLineEdit(this)) {
        setInput(m_edit);
        m_edit->setPlaceholderText(choiceInWords(column, std::string(column.byDefault)));
        if (column.type == core::CellType::Tag) askForCode(*m_edit);
        connect(m_edit, &QLineEdit::textChanged, this, &CellField::edited);
    }
    QString typed() const override { return m_edit->text(); }

protected:
    void showTyped(const QString& typed) override {
        m_edit->setText(typed);
        m_edit->setCursorPosition(0); // a long one is read from its beginning
    }
    QLineEdit& edit() const { return *m_edit; }

private:
    QLineEdit* m_edit;
};

/// A day in any common order, and what was understood.
class DayField : public LineField {
public:
    DayField(const core::Sheet& sheet, const core::Column& column, QWidget* parent)
        : LineField(sheet, column, parent)
        , m_understood(wordsLabel(this, "footnote", nameOf(column) + "_understood")) {
        beneath()->insertWidget(1, m_understood);
        m_understood->hide();
        connect(&edit(), &QLineEdit::textChanged, this, [this](const QString& typed) {
            m_understood->setText(understoodDay(typed));
            m_understood->setVisible(!m_understood->text().isEmpty());
        });
    }

private:
    QLabel* m_understood;
};

class TickField : public CellField {
public:
    TickField(const core::Sheet& sheet, const core::Column& column, QWidget* parent)
        : CellField(sheet, column, parent)
        , m_tick(new QCheckBox(columnInWords(sheet.id, column.name), this)) {
        setInput(m_tick);
        connect(m_tick, &QCheckBox::toggled, this, &CellField::edited);
    }
    QString typed() const override {
        return m_tick->isChecked() ? QStringLiteral("yes") : QStringLiteral("no");
    }

protected:
    void showTyped(const QString& typed) override { m_tick->setChecked(typed == QLatin1String("yes")); }
    QString typedOf(const std::string& stored) const override {
        return stored.empty() ? text(std::string(column().byDefault)) : text(stored);
    }

private:
    QCheckBox* m_tick;
};

/// One of a few, or none.
class ChoiceField : public CellField {
public:
    ChoiceField(const core::Sheet& sheet, const core::Column& column, QWidget* parent)
        : CellField(sheet, column, parent)
        , m_box(new ChoiceBox(this)) {
        m_box->takeRoom(4);
        setInput(m_box);
        const std::string usual(column.byDefault);
        const QString none = column.name == "kind" ? CellField::tr("which kind?") : CellField::tr("not said");
        m_box->addItem(usual.empty() ? none
                                     : CellField::tr("%1 (as usual)").arg(choiceInWords(column, usual)),
                       QString());
        for (const std::string_view choice : column.choices)
            m_box->addItem(choiceInWords(column, std::string(choice)), text(std::string(choice)));
        connect(m_box, &QComboBox::currentIndexChanged, this, &CellField::edited);
    }
    QString typed() const override { return m_box->currentData().toString(); }

protected:
    void showTyped(const QString& typed) override {
        m_box->setCurrentIndex(std::max(0, m_box->findData(typed)));
    }

private:
    ChoiceBox* m_box;
};

/// A name of the register, found by any part of it as it is typed, or taken from the list.
class NameField : public CellField {
public:
    NameField(const core::Sheet& sheet, const core::Column& column, QWidget* parent)
        : CellField(sheet, column, parent)
        , m_box(new SearchBox(this)) {
        setInput(m_box);
        connect(m_box, &QComboBox::editTextChanged, this, &CellField::edited);
    }
    QString typed() const override { return m_box->currentText(); }
    void setNames(const QStringList& names) override { m_box->setNames(names); }

protected:
    void showTyped(const QString& typed) override { m_box->setEditText(typed); }

private:
    SearchBox* m_box;
};

bool hasNames(const core::Sheet& sheet, const core::Column& column) {
    using core::CellType;
    if (column.type == CellType::Name) return true;
    return column.type == CellType::Text && (core::namedIn(sheet, sheet.indexOf(column.name)) ||
                                             column.name == "part" || column.name == "event");
}

} // namespace

CellField::CellField(const core::Sheet& sheet, const core::Column& column, QWidget* parent)
    : QWidget(parent)
    , m_sheet(sheet.id)
    , m_column(column)
    , m_rows(new QVBoxLayout(this))
    , m_unit(wordsLabel(this, "quiet", nameOf(column) + "_unit"))
    , m_refusal(wordsLabel(this, "look", nameOf(column) + "_refusal")) {
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_rows->setSpacing(0);
    m_unit->setWordWrap(false);
    m_unit->hide();
    m_refusal->hide();
}

void CellField::setInput(QWidget* input) {
    m_input = input;
    input->setObjectName(nameOf(m_column));
    input->setAccessibleName(columnInWords(m_sheet, m_column.name));
    setFocusProxy(input);
    auto* row = new QHBoxLayout;
    row->setSpacing(spaceUnit);
    row->addWidget(input, 1);
    row->addWidget(m_unit);
    m_rows->addLayout(row);
    m_rows->addWidget(m_refusal);
    setUnit(unitOf(m_sheet, m_column.name));
    input->setToolTip(hint());
}

QString CellField::hint() const {
    return hintOf(m_sheet, m_column.name);
}

void CellField::setUnit(const QString& unit) {
    m_unit->setText(unit);
    m_unit->setVisible(!unit.isEmpty());
    m_input->setAccessibleDescription(hint().isEmpty() ? sentence() : hint());
}

/// For a screen reader, where the column needs no hint.
QString CellField::sentence() const {
    const QString column = columnInWords(m_sheet, m_column.name);
    return m_unit->text().isEmpty()
               ? tr("What the register says under “%1”.").arg(column)
               : tr("What the register says under “%1”, in %2.").arg(column, m_unit->text());
}

void CellField::setStored(const std::string& cell) {
    const QSignalBlocker quiet(this);
    m_stored = cell;
    showTyped(typedOf(cell));
    m_typedAtFirst = typed();
    refuse({});
}

void CellField::setTyped(const QString& typed) {
    showTyped(typed);
}

std::string CellField::cell() const {
    return isEdited() ? cellOf(typed()) : m_stored;
}

void CellField::refuse(const QString& reason) {
    m_refusal->setText(reason);
    m_refusal->setVisible(!reason.isEmpty());
    if (reason.isEmpty())
        setUnit(m_unit->text());
    else
        m_input->setAccessibleDescription(reason);
}

QString CellField::refusal() const {
    return m_refusal->text();
}

QString CellField::typedOf(const std::string& stored) const {
    return asTyped(m_column, stored);
}

std::string CellField::cellOf(const QString& typed) const {
    return asInSheet(m_column, typed).toStdString();
}

CellField* makeCellField(const core::Sheet& sheet, const core::Column& column, QWidget* parent) {
    switch (column.type) {
    case core::CellType::YesNo:
        return new TickField(sheet, column, parent);
    case core::CellType::Choice:
        return new ChoiceField(sheet, column, parent);
    case core::CellType::Day:
    case core::CellType::ExactDay:
        return new DayField(sheet, column, parent);
    default:
        if (hasNames(sheet, column)) return new NameField(sheet, column, parent);
        return new LineField(sheet, column, parent);
    }
}

} // namespace app
