#pragma once

#include "app/gui/gear/bench/bench_round.h"
#include "app/gui/gear/bench/camera_page.h"
#include "core/register/boat.h"
#include "core/register/kit_type.h"

#include <optional>
#include <vector>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class RowList;
class ChoiceBox;
class RowListModel;

/// A service round: which rule, on which day, by whom; tag after tag is shown to the camera or typed, and one
/// record is made for all, failures apart.
class BenchPage : public CameraPage {
    Q_OBJECT

public:
    explicit BenchPage(GearTools tools, QWidget* parent = nullptr);
    ~BenchPage() override;

    void refresh() override;
    const BenchRound& round() const { return m_round; }

signals:
    void taken();    ///< a scan is in the list, or was refused
    void recorded(); ///< or refused as a whole

private:
    struct Read {
        std::vector<core::KitType> kitTypes;
        std::vector<core::Person> people;
    };

    void build();
    QLayout* buildOrder();
    QLayout* buildFoot();
    void connectParts();
    void take(Read read);
    void scan(const core::ScannedText& seen, core::SeenBy seenBy) override;
    void showScan(const BenchScan& scan);
    void showRound();
    void record();
    void takeOutcome(const core::Result<BenchOutcome>& outcome);

    std::vector<core::KitType> m_kitTypes;
    BenchRound m_round;
    bool m_isDone = false; ///< the list shows what was recorded; the next scan begins a new round
    ChoiceBox* m_rule;
    QLineEdit* m_day;
    ChoiceBox* m_by;
    QLineEdit* m_note;
    QLabel* m_summary;
    QLabel* m_rearm; ///< only where the rule is a rearm
    RowListModel* m_lines;
    RowList* m_list;
    QPushButton* m_takeBack;
    QPushButton* m_record;
};

} // namespace app
