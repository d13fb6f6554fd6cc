#pragma once

#include "app/gui/gear/record/evidence_printout.h"
#include "app/gui/widgets/gear_page.h"

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class RowList;
class RowListModel;

/// What was aboard a boat at an instant, and a printout of it.
class EvidencePanel : public GearPart {
    Q_OBJECT

public:
    explicit EvidencePanel(GearTools tools, QWidget* parent = nullptr);

    void refresh(); ///< the boats to choose from
    void look();

private:
    void build();
    void take(const EvidencePrintout& printout);
    void refuse(const QString& sentence);
    void save();
    void print();

    EvidencePrintout m_printout;
    QComboBox* m_boats;
    QLineEdit* m_when;
    QPushButton* m_lookButton;
    QPushButton* m_saveButton;
    QPushButton* m_printButton;
    QLabel* m_answer;
    QLabel* m_more;
    QLabel* m_proof;
    QLabel* m_said;
    RowListModel* m_lines;
    RowList* m_list;
};

/// `2026-03-14 06:40` or `2026-03-14` (its last minute) in the time zone of this machine.
std::optional<core::Instant> instantOfText(const QString& text);

} // namespace app
