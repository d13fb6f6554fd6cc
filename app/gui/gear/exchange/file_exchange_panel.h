#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/gear/exchange/exchange_run.h"
#include "app/gui/gear/exchange/stick_files.h"
#include "app/gui/widgets/gear_page.h"

#include <filesystem>
#include <optional>
#include <vector>

class QLabel;
class QProgressBar;
class QPushButton;

namespace app {

class RowList;
class RowListModel;

/// Exchange with another machine's file of the club: what lies on sticks, or a file chosen by hand. What
/// would come in and go there is told before anything is written; then one press for both ways; then what
/// came in, and what somebody must look at.
class FileExchangePanel : public GearPart {
    Q_OBJECT

public:
    explicit FileExchangePanel(GearTools tools, QWidget* parent = nullptr);

    void refresh();                                 ///< looks for sticks, and anew at what is proposed
    void choose(const std::filesystem::path& file); ///< and tells what an exchange with it would do
    bool isBusy() const { return m_isBusy; }        ///< something is looked for, planned or done still

private:
    /// What the usual button does.
    enum class Next { Nothing, Exchange, Copy };

    void build();
    QLayout* buildFoot();
    void connectParts();
    void forget();
    enum class Found { Chosen, Listed }; ///< one that is alone
    void look(Found alone);
    void takeFound(std::vector<FoundFile> found, Found alone);
    void press(const QString& key);
    void chooseByHand();
    void plan(core::ClubExchange::Forks forks);
    void takePlan(const core::Result<ExchangePlan>& plan);
    void proposeCopy(const FoundFile& place);
    void perform();
    void takeDone(const core::Result<Exchanged>& done);
    void copyTo(const std::filesystem::path& to);
    void copyByHand();
    void show(const QString& answer, const QString& more, std::vector<core::LookAt> lookAt);
    void begin(const QString& doing);
    void adapt();

    std::filesystem::path m_clubFile; ///< the club that all this is about
    std::vector<FoundFile> m_found;
    std::filesystem::path m_file; ///< chosen; empty: none
    std::optional<ExchangePlan> m_plan;
    std::vector<core::LookAt> m_lookAt;
    Next m_next = Next::Nothing;
    bool m_isForked = false;
    bool m_isBusy = false;
    int m_turn = 0; ///< counts the clubs that the page was shown for
    QPushButton* m_again;
    QPushButton* m_byHand;
    RowListModel* m_fileLines;
    RowList* m_files;
    QLabel* m_hint;
    QProgressBar* m_progress;
    QLabel* m_answer;
    QLabel* m_more;
    RowListModel* m_lookLines;
    RowList* m_looks;
    QPushButton* m_copy;
    QPushButton* m_asNewMachine;
    QPushButton* m_go;
};

} // namespace app
