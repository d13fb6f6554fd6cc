// The pictures of docs/screens: the demo club on a day of its own, in every theme and two sizes.
//     gui_screens FOLDER

#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "tests/app/gui/screens/screens.h"

#include "app/gui/board/shed_board.h"
#include "app/gui/camera/camera_panel.h"
#include "app/gui/check/check_page.h"
#include "app/gui/main_window.h"
#include "app/paper/tag_scene.h"

#include <QPushButton>

namespace {

using support::allThemes;
using support::at;
using support::bothSizes;
using support::waitFor;

/// Signs a check with all of the boat's kit, so that the board has more than one thing to say.
void signCheck(core::Club& club, const std::string& boat, core::Phase phase, core::Moment moment,
               const std::vector<std::string>& people) {
    const auto check = club.checks().open(boat, phase, moment);
    if (!check || !club.checks().giveNames(check->check, people, moment)) return;
    const auto kit = club.kit().labelsOfBoat(boat);
    for (const core::TagLabel& tag : *kit)
        if (!club.checks().scan(check->check, tag.code, core::SeenBy::Camera, moment)) return;
    const auto answer = club.checks().answer(check->check, support::screensDay());
    for (const core::PointAnswer& point : answer->points) {
        const double value =
            point.point.kind == core::PointKind::Look ? 1 : point.point.limits.low.value_or(0) + 1;
        if (!club.checks().recordPoint(check->check, point.point.point, value, moment)) return;
    }
    if (!club.checks().sign(check->check, people.front(), "Capsized dinghy off the reeds", moment)) return;
}

std::vector<std::filesystem::path> scenesOfBittern(core::Club& club, const QString& folder) {
    std::vector<core::TagLabel> tags = *club.kit().labelsOfBoat("Bittern");
    const auto knife = club.kit().tagLabels({"KMRMQRZM66"}); // Dabchick's, missing since training
    tags.push_back(knife->front());
    std::erase_if(tags, [](const core::TagLabel& tag) { return tag.name == "bailer"; });
    std::vector<std::filesystem::path> files;
    for (const app::TagScene& scene : app::tagScenes(tags, 5)) {
        const QString file = QStringLiteral("%1/heap-%2.png").arg(folder).arg(files.size());
        if (scene.picture.save(file)) files.emplace_back(file.toStdString());
    }
    return files;
}

const QStringList oneTheme{"light"};
const QList<QSize> oneSize{{1280, 800}};

bool isSettled(app::MainWindow& window) {
    app::CheckSession* session = window.checkPage().session();
    return session && session->state() && !session->isBusy();
}

} // namespace

int main(int argc, char** argv) {
    const support::ScreensProgram program(argc, argv);
    if (!program.hasFolder()) return 2;
    std::vector<std::filesystem::path> scenes;
    {
        auto club = program.makeClub();
        if (!club) return 3;
        signCheck(*club, "Grebe", core::Phase::Launch, at("2026-03-14T05:40:00Z"),
                  {"Petra Lund", "Sami Reeve"});
        signCheck(*club, "Grebe", core::Phase::Return, at("2026-03-14T06:20:00Z"),
                  {"Petra Lund", "Sami Reeve"});
        signCheck(*club, "Dabchick", core::Phase::Launch, at("2026-03-14T06:31:00Z"),
                  {"Marta Quill", "Hal Okoro"});
        scenes = scenesOfBittern(*club, program.scratch());
    }

    app::Choosers choosers;
    const QString sheet = program.folder() + "/sheet.pdf";
    choosers.saveFile = [&](QWidget*, const QString&) { return sheet; };
    app::MainWindow window([] { return at("2026-03-14T06:40:00Z"); }, choosers);
    window.setCameraWanted(false);
    app::WindowPictures screens(window, program.folder());
    bool isWritten = true;
    window.show();
    isWritten &= screens.take("welcome", allThemes, bothSizes);
    bool isBoard = false;
    QObject::connect(&window, &app::MainWindow::boardShown, &window, [&] { isBoard = true; });
    window.openClub(program.clubFile());
    if (!waitFor([&] { return isBoard; })) return 3;
    isWritten &= screens.take("board", allThemes, bothSizes);

    window.startCheck("Bittern", core::Phase::Launch);
    waitFor([&] { return isSettled(window); });
    app::CheckSession& session = *window.checkPage().session();
    isWritten &= screens.take("launch-begun", allThemes, bothSizes);
    session.giveNames({"Tobin Ashe", "Ines Varro"});
    auto* progress = window.checkPage().findChild<QWidget*>("recordingProgress");
    for (const std::filesystem::path& scene : scenes) {
        window.checkPage().camera().readRecording({scene});
        waitFor([&] { return !progress->isVisible() && isSettled(window); }, std::chrono::seconds(60));
    }
    window.findChild<QPushButton*>("logReadButton")->click();
    for (const char* point : {"hull and floor", "bungs in", "handles and straps"})
        session.recordPoint(point, 1);
    session.recordPoint("port chamber", 19);
    session.recordPoint("starboard chamber", 15.5);
    waitFor([&] { return isSettled(window); });
    isWritten &= screens.take("launch", allThemes, bothSizes);
    window.checkPage().beginSigning();
    isWritten &= screens.take("launch-sign", allThemes, bothSizes);
    session.sign("Tobin Ashe", "Two swimmers drift off");
    auto* save = window.findChild<QPushButton*>("savePrintoutButton");
    waitFor([&] { return save->isVisible(); });
    isWritten &= screens.take("launch-signed", allThemes, bothSizes);
    save->click();
    isWritten &= waitFor([&] { return std::filesystem::exists(sheet.toStdString()); });
    window.startCheck("Dabchick", core::Phase::Return);
    waitFor([&] { return isSettled(window); });
    for (const char* code : {"KNGZSTQ3HN", "KEY1Y7J4DE", "KQ8SK0R3E2", "KNEDP3BXJC", "KB5W0R9XJB"})
        window.checkPage().session()->scan(code, core::SeenBy::Typed);
    waitFor([&] { return isSettled(window); });
    isWritten &= screens.take("return", allThemes, bothSizes);
    window.checkPage().goToTrip();
    isWritten &= screens.take("trip", allThemes, bothSizes);
    window.setLanguage("de");
    waitFor([&] { return isSettled(window); });
    isWritten &= screens.take("return-german", oneTheme, oneSize);
    window.startCheck("Bittern", core::Phase::Launch);
    waitFor([&] { return isSettled(window); });
    isWritten &= screens.take("launch-german", oneTheme, oneSize);
    return isWritten ? 0 : 3;
}
