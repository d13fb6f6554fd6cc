#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

#include "core/exchange/csv_import.h"
#include "core/record/facts.h"
#include "core/register/sheets.h"

#include <map>
#include <memory>
#include <vector>

class QGridLayout;
class QVBoxLayout;

namespace app {

class CellField;
class RuleSentence;

/// Names that a field of that column offers.
using NamesOfColumns = std::map<std::string, QStringList, std::less<>>;

/// The cells of one row, made from the sheet's description: labels and fields; a life rule is a sentence with
/// gaps. It holds what is typed and judges nothing.
class RowForm : public QWidget {
    Q_OBJECT

public:
    explicit RowForm(QWidget* parent = nullptr);
    ~RowForm() override;

    /// The fields of that sheet. A row that is there keeps its key; columns of `given` are not asked.
    void begin(core::SheetId sheet, bool isNew, const std::vector<std::string>& given);
    void setStored(const core::Cells& row); ///< aligned with the sheet's columns
    void setNames(const NamesOfColumns& names);
    core::CellTexts changes() const;          ///< only cells that were touched and differ from what is stored
    std::map<QString, QString> typed() const; ///< what was touched, by column: a draft
    void setTyped(const std::map<QString, QString>& typed);
    /// Each reason at its cell. `all`: also at cells that nobody touched yet. What has no field in view comes
    /// back, a sentence each.
    QStringList refuse(const std::vector<core::RejectedRow>& rejected, bool all);
    CellField* field(std::string_view column) const; ///< null: not asked here
    void takeKeyboard();                             ///< to the first refused field, else to the first
    QString hint() const; ///< of the field that has the keyboard; empty: there is none

signals:
    void cellEdited(); ///< something was typed or chosen

private:
    void clear();
    void addToGrid(CellField& field, int row);
    void adaptNames();

    core::SheetId m_sheet = core::SheetId::Places;
    core::Cells m_stored;
    NamesOfColumns m_names;
    QVBoxLayout* m_layout;
    QWidget* m_body = nullptr; ///< of this sheet
    RuleSentence* m_sentence = nullptr;
    std::vector<CellField*> m_fields;
};

} // namespace app
