#pragma once

#include <QString>
#include <QWidget>

#include <string_view>
#include <vector>

namespace app {

class CellField;
class FlowLayout;

/// A life rule as a sentence with gaps, another for each kind of rule: "inspect every 12 months, a stop when
/// overdue, 30 days' notice, source …". It arranges fields that are made for it; what a kind does not ask is
/// not in view.
class RuleSentence : public QObject {
    Q_OBJECT

public:
    /// `parent` has the fields and gets the layout.
    RuleSentence(std::vector<CellField*> fields, QWidget* parent);

    void adapt();   ///< to the kind of rule that is chosen
    void fitGaps(); ///< when a cell was refused, or is no more
    bool asks(std::string_view column) const;

private:
    CellField* field(std::string_view column) const;
    void addWords(const QString& words);
    void addGap(CellField& field);

    QWidget& m_parent;
    std::vector<CellField*> m_fields;
    std::string m_kind;
    std::vector<std::string> m_asked;
    std::vector<QWidget*> m_words;
    FlowLayout* m_flow;
};

/// The sentence of that kind with its gaps as {column}; of a new rule with its name before it.
QString ruleTemplate(const std::string& kind, bool isNew);

} // namespace app
