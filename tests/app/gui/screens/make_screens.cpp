// The pictures of docs/screens: the demo club on a day of its own, in every theme and two sizes.
//     gui_screens FOLDER

#include "tests/app/gui/screens/screens.h"

#include "app/gui/board/shed_board.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/check/check_page.h"
#include "app/gui/main_window.h"
#include "app/paper/tag_scene.h"

#include <QLineEdit>
#include <QPushButton>

namespace {

using support::allThemes;
using support::at;
using support::bothSizes;
using support::waitFor;

/// Signs a check with all of the boat's kit, so that the board has more than one thing to say.
void signCheck(core::Club& club, const std::string& boat, core::Phase phase, core::Moment moment,
               const std::vector<std::string>& people) {
    const std::string check = support::checkWithAllKit(club, boat, phase, moment, people);
    const auto answer = club.checks().answer(check, support::screensDay());
    if (!answer) return;
    for (const core::PointAnswer& point : answer->points) {
        const double value =
            point.point.kind == core::PointKind::Look ? 1 : point.point.limits.low.value_or(0) + 1;
        if (!club.checks().recordPoint(check, point.point.name, value, moment)) return;
    }
    if (!club.checks().sign(check, people.front(), "Capsized dinghy off the reeds", moment)) return;
}

/// What lies in the boat: all but its bailer, and a knife of Dabchick's that was missing since training.
std::vector<core::TagLabel> tagsInBittern(core::Club& club) {
    std::vector<core::TagLabel> tags = *club.kit().labelsOfBoat("Bittern");
    const auto knife = club.kit().tagLabels({"KMRMQRZM66"});
    tags.push_back(knife->front());
    std::erase_if(tags, [](const core::TagLabel& tag) { return tag.name == "bailer"; });
    return tags;
}

std::vector<std::filesystem::path> scenesOf(const std::vector<core::TagLabel>& tags, const QString& folder) {
    std::vector<std::filesystem::path> files;
    for (const app::TagScene& scene : app::tagScenes(tags, 5)) {
        const QString file = QStringLiteral("%1/heap-%2.png").arg(folder).arg(files.size());
        if (scene.picture.save(file)) files.emplace_back(file.toStdString());
    }
    return files;
}

void makeChecks(core::Club& club) {
    signCheck(club, "Grebe", core::Phase::Launch, at("2026-03-14T05:40:00Z"), {"Petra Lund", "Sami Reeve"});
    signCheck(club, "Grebe", core::Phase::Return, at("2026-03-14T06:20:00Z"), {"Petra Lund", "Sami Reeve"});
    signCheck(club, "Dabchick", core::Phase::Launch, at("2026-03-14T06:31:00Z"),
              {"Marta Quill", "Hal Okoro"});
}

const QStringList oneTheme{"light"};
const QList<QSize> oneSize{{1280, 800}};

/// The window at work, and the pictures of it.
class Screens {
public:
    explicit Screens(const support::ScreensProgram& program)
        : m_club(program.clubFile())
        , m_sheet(program.folder() + "/sheet.pdf")
        , m_window([] { return at("2026-03-14T06:40:00Z"); }, savingTo(m_sheet))
        , m_pictures(m_window, program.folder()) {
        m_window.setCameraWanted(false);
        m_window.show();
    }

    bool isWritten() const { return m_isWritten; }

    void takeBoard() {
        take("welcome");
        bool isBoard = false;
        QObject::connect(&m_window, &app::MainWindow::boardShown, &m_window, [&] { isBoard = true; });
        m_window.openClub(m_club);
        m_isWritten &= waitFor([&] { return isBoard; });
        QObject::disconnect(&m_window, &app::MainWindow::boardShown, nullptr, nullptr);
        take("board");
    }

    /// Of Bittern, from its empty lists to its printout.
    void takeLaunch(const std::vector<std::filesystem::path>& scenes) {
        start("Bittern", core::Phase::Launch);
        take("launch-begun");
        session().giveNames({"Tobin Ashe", "Ines Varro"});
        readScenes(scenes);
        settle();
        m_window.findChild<QPushButton*>("logReadButton")->click();
        for (const char* point : {"hull and floor", "bungs in", "handles and straps"})
            session().recordPoint(point, 1);
        session().recordPoint("port chamber", 19);
        session().recordPoint("starboard chamber", 15.5);
        settle();
        take("launch");
        m_window.checkPage().beginSigning();
        take("launch-sign");
        session().sign("Tobin Ashe", "Two swimmers drift off");
        auto* save = m_window.findChild<QPushButton*>("savePrintoutButton");
        waitFor([&] { return save->isVisible(); });
        take("launch-signed");
        save->click();
        m_isWritten &= waitFor([&] { return std::filesystem::exists(m_sheet.toStdString()); });
    }

    void takeReturn() {
        start("Dabchick", core::Phase::Return);
        for (const char* code : {"KNGZSTQ3HN", "KEY1Y7J4DE", "KQ8SK0R3E2", "KNEDP3BXJC", "KB5W0R9XJB"})
            session().scan(code, core::SeenBy::Typed);
        settle();
        take("return");
        m_window.checkPage().goToTrip();
        take("trip");
    }

    /// Two without a life jacket, who are to launch all the same.
    void takeUrgent(const QString& name) {
        start("Grebe", core::Phase::Launch);
        session().giveNames({"Petra Lund", "Sami Reeve"});
        settle();
        m_window.checkPage().beginSigning();
        auto* reason = m_window.checkPage().findChild<QLineEdit*>("urgentReasonEdit");
        reason->setText("ab");
        m_isWritten &= m_pictures.take(name + "-reason", oneTheme, oneSize);
        reason->setText("Two swimmers drift off");
        m_window.checkPage().findChild<QPushButton*>("signNowButton")->click();
        m_isWritten &= m_pictures.take(name + "-jackets", oneTheme, oneSize);
        m_window.checkPage().open("Grebe", core::Phase::Launch, false);
        settle();
    }

    /// A check in which a damage was taken back, and which nobody wants any more.
    void takeLetGo(const QString& name) {
        start("Grebe", core::Phase::Launch);
        session().scan("KMC20GKEK9", core::SeenBy::Typed);
        session().withdraw("KMC20GKEK9", "Sash torn at the clip");
        session().undo();
        settle();
        m_isWritten &= m_pictures.take(name + "-undone", allThemes, oneSize);
        m_window.checkPage().letGo();
        m_isWritten &= m_pictures.take(name, allThemes, oneSize);
        session().undo();
        settle();
    }

    void takeGerman() {
        m_window.setLanguage("de");
        start("Dabchick", core::Phase::Return);
        m_isWritten &= m_pictures.take("return-german", oneTheme, oneSize);
        start("Bittern", core::Phase::Launch);
        m_isWritten &= m_pictures.take("launch-german", oneTheme, oneSize);
        takeUrgent("urgent-german");
        takeLetGo("let-go-german");
    }

private:
    static app::Choosers savingTo(const QString& file) {
        app::Choosers choosers;
        choosers.saveFile = [file](QWidget*, const QString&) { return file; };
        return choosers;
    }

    app::CheckSession& session() { return *m_window.checkPage().session(); }
    bool isSettled() {
        app::CheckSession* open = m_window.checkPage().session();
        return open && open->state() && !open->isBusy();
    }
    void settle() {
        waitFor([&] { return isSettled(); });
    }
    void start(const QString& boat, core::Phase phase) {
        m_window.startCheck(boat, phase);
        settle();
    }
    void take(const QString& name) { m_isWritten &= m_pictures.take(name, allThemes, bothSizes); }

    void readScenes(const std::vector<std::filesystem::path>& scenes) {
        auto* progress = m_window.checkPage().findChild<QWidget*>("recordingProgress");
        for (const std::filesystem::path& scene : scenes) { // each alone: they are no film of one place
            m_window.checkPage().camera().readRecording({scene});
            waitFor([&] { return !progress->isVisible(); }, std::chrono::seconds(60));
        }
    }

    std::filesystem::path m_club;
    QString m_sheet;
    app::MainWindow m_window;
    app::WindowPictures m_pictures;
    bool m_isWritten = true;
};

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder()) return 2;
    std::vector<std::filesystem::path> scenes;
    {
        auto club = program.makeClub();
        if (!club) return 3;
        makeChecks(*club);
        scenes = scenesOf(tagsInBittern(*club), program.scratch());
    }
    Screens screens(program);
    screens.takeBoard();
    screens.takeLaunch(scenes);
    screens.takeReturn();
    screens.takeUrgent("urgent");
    screens.takeLetGo("let-go");
    screens.takeGerman();
    return screens.isWritten() ? 0 : 3;
}
