#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/answers/missing_list.h"
#include "core/club/club_checks.h"

#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class RowList;
class ChoiceBox;
class RowListModel;
class WriteOffChoice;

/// What is missing, longest first; how each was lost from sight, whom to ask and where to look; found by its
/// code, or written off.
class MissingPage : public GearPage {
    Q_OBJECT

public:
    explicit MissingPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    bool takeScan(const QString& text, core::SeenBy how) override;
    const std::vector<core::MissingItem>& missing() const { return m_missing; }

private:
    struct Read {
        std::vector<core::MissingItem> missing;
        std::vector<core::OpenCheck> stocktakes;
    };

    void build();
    QWidget* buildChain();
    QLayout* buildFoot();
    void connectParts();
    void take(Read read);
    void choose(const QString& code);
    void found(const QString& text, core::SeenBy seenBy);
    void writeOff(const QString& why);

    std::vector<core::MissingItem> m_missing;
    QString m_chosen; ///< id
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
    QWidget* m_one; ///< what is said of the chosen one
    QLabel* m_name;
    RowListModel* m_chain;
    RowList* m_chainList;
    QLabel* m_next;
    WriteOffChoice* m_writeOff;
    ChoiceBox* m_stocktakes;
    QPushButton* m_begin;
    QLineEdit* m_code;
};

} // namespace app
