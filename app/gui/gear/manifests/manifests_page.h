#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include "app/gui/widgets/gear_page.h"

#include "app/gui/gear/manifests/manifest_words.h"
#include "core/register/kit_type.h"

#include <array>
#include <optional>

class QLabel;
class QPushButton;
class QRadioButton;

namespace app {

class RowList;
class ChoiceBox;
class ImportRun;
class ManifestLinePanel;
class ManifestPanel;
class ManifestPointPanel;
class RowListModel;
class PlainTable;
class PlainTableModel;

/// What is asked of each class of boat, each boat's differences, and every version there was. Lines and
/// points are changed here, or in the register's sheets.
class ManifestsPage : public GearPage {
    Q_OBJECT

public:
    explicit ManifestsPage(GearTools tools, QWidget* parent = nullptr);

    void refresh() override;
    const std::optional<ManifestAnswer>& answer() const { return m_answer; }

private:
    struct Read {
        ManifestAnswer answer;
        QStringList classes, withoutBoat, boats; ///< names; of classes those that no boat has stand apart
        std::vector<core::KitType> kitTypes;
    };

    void build();
    QLayout* buildLeft();
    QLayout* buildRight();
    void connectParts();
    void connectPanel(ManifestPanel* panel);
    static core::Result<Read> readManifest(core::Club& club, core::ManifestOwner owner);
    void take(Read read);
    void showUnreadable(const core::Error& error);
    void showNothing();
    void fillOwners(const Read& read);
    core::ManifestOwner owner() const;
    QString boatOnPaper(); ///< whose check list is printed; empty: there is none, and that is said
    const core::ManifestVersion* version() const; ///< an earlier one that is shown; null: today's
    void showTable();
    std::array<QWidget*, 3> besides() const; ///< what may stand beside the table, one at a time
    void showBeside(QWidget* shown);
    void showSide();
    template <class Panel, class Asked>
    void showAsked(Panel& panel, const std::vector<Asked>& rows, const QString& hint);
    void openRow();
    void addRow();
    void afterChange(const QString& sentence);
    void exportSheets();
    void importSheets();

    std::optional<ManifestAnswer> m_answer;
    std::vector<core::KitType> m_kitTypes;
    bool m_isUnreadable = false; ///< the record was, when it was last asked for
    QString m_version;           ///< stamp of the one chosen
    ChoiceBox* m_owners;
    QLabel* m_summary;
    QRadioButton* m_showLines;
    QRadioButton* m_showPoints;
    PlainTableModel* m_rows;
    PlainTable* m_table;
    QPushButton* m_add;
    QPushButton* m_export;
    QPushButton* m_import;
    RowListModel* m_versionRows;
    RowList* m_versions;
    QLabel* m_about;
    QWidget* m_besideAbout = nullptr; ///< which it stands in
    ManifestLinePanel* m_line;
    ManifestPointPanel* m_point;
    ImportRun* m_importRun;
};

} // namespace app
