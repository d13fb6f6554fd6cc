#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

#include "core/register/sheets.h"

class QLabel;
class QVBoxLayout;

namespace app {

/// One cell of a row in a form, made by its column's description: a tick box, a list, a name that is found as
/// it is typed, a day that says what was understood, a number with its unit, or words. Nothing is judged
/// here; whoever does has a place beneath the field to say why a cell is refused.
class CellField : public QWidget {
    Q_OBJECT

public:
    const core::Column& column() const { return m_column; }
    /// As it is stored. From then on `isEdited` says whether it was touched.
    void setStored(const std::string& cell);
    /// What a person would have typed or chosen: a draft.
    void setTyped(const QString& typed);
    virtual QString typed() const = 0;
    /// As the register's sheets spell it; what is stored while nothing was touched.
    std::string cell() const;
    bool isEdited() const { return typed() != m_typedAtFirst; }
    /// Beneath the field; empty: there is nothing to say.
    void refuse(const QString& reason);
    QString refusal() const;
    /// Names to be found in it, or suggestions; others have none.
    virtual void setNames(const QStringList& /*names*/) {}
    /// What the keyboard goes to.
    QWidget* input() const { return m_input; }
    void setUnit(const QString& unit);
    QString hint() const; ///< how it is written; empty: that goes without saying
    QString sentence() const;

signals:
    void edited();

protected:
    CellField(const core::Sheet& sheet, const core::Column& column, QWidget* parent);

    /// To be called once by the maker.
    void setInput(QWidget* input);
    virtual void showTyped(const QString& typed) = 0;
    virtual QString typedOf(const std::string& stored) const;
    virtual std::string cellOf(const QString& typed) const;
    core::SheetId sheet() const { return m_sheet; }
    QVBoxLayout* beneath() const { return m_rows; }

private:
    core::SheetId m_sheet;
    const core::Column& m_column;
    std::string m_stored;
    QString m_typedAtFirst;
    QVBoxLayout* m_rows;
    QWidget* m_input = nullptr;
    QLabel* m_unit;
    QLabel* m_refusal;
};

/// The field of that column; its parts are named "cell_COLUMN", "cell_COLUMN_refusal" and so on.
CellField* makeCellField(const core::Sheet& sheet, const core::Column& column, QWidget* parent);

} // namespace app
