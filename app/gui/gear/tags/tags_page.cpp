#include "app/gui/gear/tags/tags_page.h"

#include "app/gui/gear/setup/set_up_notes.h"
#include "app/gui/gear/tags/tag_ruler.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/choice_box.h"
#include "app/gui/widgets/flow_layout.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/row_list.h"
#include "app/gui/widgets/row_list_model.h"
#include "app/paper/label_sheet.h"
#include "app/paper/tag_sheet.h"
#include "app/text/cautions.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_kit.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <array>
#include <cmath>

namespace app {
namespace {

constexpr double usualMm = 30;

QString paperInWords(const LabelPaper& paper) {
    return TagsPage::tr("labels %1 × %2 mm, %3 on A4")
        .arg(numberInWords(paper.width), numberInWords(paper.height))
        .arg(paper.perSheet());
}

} // namespace

TagsPage::TagsPage(GearTools tools, QWidget* parent)
    : GearPage(std::move(tools), "tagsPage", parent)
    , m_homes(new ChoiceBox(this))
    , m_kitTypes(new ChoiceBox(this))
    , m_control(new QCheckBox(tr("control tags too"), this))
    , m_lines(new RowListModel(this))
    , m_list(new RowList(*m_lines, this))
    , m_papers(new ChoiceBox(this))
    , m_sizes(new ChoiceBox(this))
    , m_ruler(new TagRuler(this))
    , m_wornButton(wordsButton(this, tr("Only those wearing out"), "tagsWornButton"))
    , m_summary(wordsLabel(this, "remark", "tagsSummaryLabel"))
    , m_said(wordsLabel(this, "quiet", "tagsSaidLabel"))
    , m_writeButton(wordsButton(this, tr("Save the sheets as PDF…"), "tagsWriteButton", true)) {
    build();
    connectParts();
    m_papers->addItem(tr("A4, to be cut"), -1);
    for (std::size_t i = 0; i < labelPapers().size(); ++i)
        m_papers->addItem(paperInWords(labelPapers()[i]), static_cast<int>(i));
    offerSizes();
}

void TagsPage::build() {
    m_homes->setObjectName("tagsHomeBox");
    m_kitTypes->setObjectName("tagsKitTypeBox");
    m_control->setObjectName("tagsControlCheck");
    m_list->setObjectName("tagsList");
    m_list->setAccessibleName(tr("tags to print; a press leaves one out"));
    m_papers->setObjectName("tagsPaperBox");
    m_sizes->setObjectName("tagsSizeBox");
    for (ChoiceBox* box : {m_homes, m_kitTypes, m_papers}) {
        box->takeRoom(8);
        box->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    }
    auto* body = new QHBoxLayout;
    body->setSpacing(4 * spaceUnit);
    body->addLayout(buildChoice(), 12);
    body->addLayout(buildPaper(), 10);
    QVBoxLayout& layout = column(spaceUnit);
    layout.setSpacing(-1); // the style's own
    layout.addLayout(body, 1);
    addCaution(layout, "tagsCautionLabel", tagCaution());
}

QLayout* TagsPage::buildChoice() {
    auto* filters = new FlowLayout;
    addWithWord(*filters, tr("of"), m_homes, true);
    addWithWord(*filters, tr("kit"), m_kitTypes, true);
    m_homes->setAccessibleName(tr("boat, place or person"));
    m_kitTypes->setAccessibleName(tr("kit type"));
    auto* all = wordsButton(this, tr("Take all"), "tagsAllButton");
    auto* none = wordsButton(this, tr("Take none"), "tagsNoneButton");
    connect(all, &QPushButton::clicked, this, [this] {
        m_choice.leaveOut(false);
        showTags();
    });
    connect(none, &QPushButton::clicked, this, [this] {
        m_choice.leaveOut(true);
        showTags();
    });
    auto* foot = new FlowLayout;
    connect(m_wornButton, &QPushButton::clicked, this, [this] {
        m_choice.takeWorn();
        showTags();
    });
    for (QPushButton* button : {all, none, m_wornButton})
        foot->addWidget(button);
    foot->addStretch();
    foot->addWidget(m_control);
    auto* layout = new QVBoxLayout;
    layout->setSpacing(spaceUnit);
    layout->addLayout(filters);
    layout->addWidget(m_list, 1);
    layout->addLayout(foot);
    return layout;
}

QLayout* TagsPage::buildPaper() {
    auto* paperRow = new QHBoxLayout;
    addWithWord(*paperRow, tr("paper"), m_papers);
    paperRow->setStretch(1, 1);
    auto* sizeRow = new QHBoxLayout;
    addWithWord(*sizeRow, tr("symbol"), m_sizes);
    sizeRow->addStretch(1);
    auto* scale = wordsLabel(this, "footnote", "tagsScaleLabel");
    scale->setText(tr("Not the printed size. Print at 100 %, then measure the symbol with a ruler: a printer "
                      "that fits to the page makes it smaller."));
    auto* layout = new QVBoxLayout;
    layout->setSpacing(spaceUnit);
    layout->addLayout(paperRow);
    layout->addLayout(sizeRow);
    layout->addWidget(m_ruler, 1);
    layout->addWidget(scale);
    layout->addWidget(m_summary);
    layout->addWidget(m_writeButton);
    layout->addWidget(m_said);
    return layout;
}

void TagsPage::connectParts() {
    connect(m_homes, &QComboBox::activated, this, [this] { showTags(); });
    connect(m_kitTypes, &QComboBox::activated, this, [this] { showTags(); });
    connect(m_control, &QCheckBox::toggled, this, [this] { showTags(); });
    connect(m_list, &RowList::rowPressed, this, [this](const QString& code) {
        m_choice.toggle(code);
        showTags();
    });
    connect(m_papers, &QComboBox::activated, this, [this] { offerSizes(); });
    connect(m_sizes, &QComboBox::activated, this, [this] { showSize(); });
    connect(m_writeButton, &QPushButton::clicked, this, &TagsPage::write);
}

void TagsPage::sayOfScan(const QString& sentence) {
    m_said->setText(sentence);
}

void TagsPage::refresh() {
    using Labels = core::Result<std::vector<core::TagLabel>>;
    read([today = today()](core::Club& club) { return club.kit().allTagLabels(today); },
         [this](const Labels& labels) {
             m_choice.setTags(labels ? *labels : std::vector<core::TagLabel>());
             fillBox(*m_homes, tr("all"), m_choice.homes());
             fillBox(*m_kitTypes, tr("all"), m_choice.kitTypes());
             showTags();
         });
}

void TagsPage::showTags() {
    m_choice.setHome(m_homes->currentData().toString());
    m_choice.setKitType(m_kitTypes->currentData().toString());
    m_choice.setWithControl(m_control->isChecked());
    m_lines->setRows(m_choice.lines());
    m_wornButton->setVisible(m_choice.wornCount() > 0);
    showSize();
}

const LabelPaper* TagsPage::paper() const {
    const int chosen = m_papers->currentData().toInt();
    return chosen < 0 ? nullptr : &labelPapers()[static_cast<std::size_t>(chosen)];
}

double TagsPage::symbolMm() const {
    return m_sizes->currentData().toDouble();
}

/// What the paper carries; the size chosen before, or the next smaller one.
void TagsPage::offerSizes() {
    const double before = m_sizes->count() > 0 ? symbolMm() : usualMm;
    const double most = paper() ? std::floor(biggestSymbolOn(*paper())) : biggestSymbolMm;
    m_sizes->clear();
    for (const double mm : {10.0, 12.0, 14.0, 16.0, 20.0, 25.0, 30.0, 40.0, 60.0, 90.0})
        if (mm <= most) m_sizes->addItem(tr("%1 mm").arg(numberInWords(mm)), mm);
    int chosen = 0;
    for (int i = 0; i < m_sizes->count(); ++i)
        if (m_sizes->itemData(i).toDouble() <= before) chosen = i;
    m_sizes->setCurrentIndex(chosen);
    showSize();
}

void TagsPage::showSize() {
    const auto tags = m_choice.chosen();
    const auto count = static_cast<int>(tags.size());
    m_ruler->setTag(tags.empty() ? std::string("K000000000") : tags.front().code, symbolMm());
    m_summary->setText(count == 0 ? tr("No tag is chosen.")
                                  : tr("%1, each symbol %2 mm wide.")
                                            .arg(counted(count, QT_TRANSLATE_N_NOOP("Words", "%n tag"),
                                                         QT_TRANSLATE_N_NOOP("Words", "%n tags")),
                                                 numberInWords(symbolMm())) +
                                        QLatin1Char(' ') + tagReachInWords(symbolMm()));
    m_writeButton->setEnabled(count > 0);
}

void TagsPage::write() {
    const QString file = fileToSave(tools().choosers, this, tr("tags.pdf"));
    if (file.isEmpty()) return;
    m_writeButton->setEnabled(false);
    m_said->setText(tr("The sheets are being made."));
    // On the club's thread, for a large club has many sheets; it asks nothing of the club.
    ask(
        [path = file.toStdString(), tags = m_choice.chosen(), mm = symbolMm(),
         onLabels = paper()](core::Club&) -> core::Result<int> {
            return onLabels ? writeTagsOnLabels(path, tags, *onLabels, mm) : writeTagSheets(path, tags, mm);
        },
        [this, file](const core::Result<int>& sheets) { sayWritten(sheets, file); });
}

void TagsPage::sayWritten(const core::Result<int>& sheets, const QString& file) {
    m_writeButton->setEnabled(true);
    if (sheets) SetUpNotes(tools().club.file()).notePrinted();
    m_said->setText(sheets ? tr("Saved: %1, %2")
                                 .arg(counted(*sheets, QT_TRANSLATE_N_NOOP("Words", "%n sheet"),
                                              QT_TRANSLATE_N_NOOP("Words", "%n sheets")),
                                      text(file))
                           : errorSentence(sheets.error()));
    emit written();
}

} // namespace app
