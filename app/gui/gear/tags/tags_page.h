#pragma once

#include "app/gui/gear/tags/tag_choice.h"
#include "app/gui/widgets/gear_page.h"
#include "core/base/result.h"

class QCheckBox;
class QLabel;
class QLayout;
class QPushButton;

namespace app {

class ChoiceBox;
class RowList;
class RowListModel;
class TagRuler;
struct LabelPaper;

/// Sheets of tags: of which boat, place or kit type, on which paper, how large.
class TagsPage : public GearPage {
    Q_OBJECT

public:
    explicit TagsPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    void sayOfScan(const QString& sentence) override;
    const TagChoice& choice() const { return m_choice; }

signals:
    void written(); ///< or refused

private:
    void build();
    void connectParts();
    QLayout* buildChoice();
    QLayout* buildPaper();
    void showTags();
    void offerSizes();
    void showSize();
    void write();
    void sayWritten(const core::Result<int>& sheets, const QString& file);
    const LabelPaper* paper() const; ///< null: the whole sheet, to be cut
    double symbolMm() const;

    TagChoice m_choice;
    ChoiceBox* m_homes;
    ChoiceBox* m_kitTypes;
    QCheckBox* m_control;
    RowListModel* m_lines;
    RowList* m_list;
    ChoiceBox* m_papers;
    ChoiceBox* m_sizes;
    TagRuler* m_ruler;
    QPushButton* m_wornButton; ///< takes those that wear out alone
    QLabel* m_summary;
    QLabel* m_said;
    QPushButton* m_writeButton;
};

} // namespace app
