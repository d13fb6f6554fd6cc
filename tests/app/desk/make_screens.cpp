// The pictures of docs/screens: the demo club on a day of its own, in every theme and two sizes.
//     desk_screens FOLDER

#include <QApplication>
#include <QDir>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>
#include <QTextStream>

#include "app/common/tag_scene.h"
#include "app/desk/board/shed_board.h"
#include "app/desk/camera/camera_panel.h"
#include "app/desk/check/check_page.h"
#include "app/desk/look/dress.h"
#include "app/desk/look/palette.h"
#include "app/desk/main_window.h"
#include "app/desk/window_pictures.h"
#include "core/club.h"
#include "tests/support/wait_for.h"

#include <filesystem>
#include <memory>

namespace {

using support::waitFor;

core::CalendarDay today() {
    return *core::CalendarDay::from(2026, 3, 14);
}

core::Moment at(const char* instant) {
    return {*core::Instant::parse(instant), today()};
}

/// Signs a check with all of the boat's kit, so that the board has more than one thing to say.
void signCheck(core::Club& club, const std::string& boat, core::Phase phase, core::Moment moment,
               const std::vector<std::string>& people) {
    const auto check = club.openCheck(boat, phase, moment);
    if (!check || !club.giveNames(check->check, people, moment)) return;
    const auto kit = club.kitOf(boat);
    for (const core::TagLabel& tag : *kit)
        if (!club.scan(check->check, tag.code, core::SeenBy::Camera, moment)) return;
    const auto answer = club.answer(check->check, today());
    for (const core::PointAnswer& point : answer->points) {
        const double value =
            point.point.kind == core::PointKind::Look ? 1 : point.point.limits.low.value_or(0) + 1;
        if (!club.recordPoint(check->check, point.point.point, value, moment)) return;
    }
    if (!club.sign(check->check, people.front(), "Capsized dinghy off the reeds", moment)) return;
}

std::vector<std::filesystem::path> scenesOfBittern(core::Club& club, const QString& folder) {
    std::vector<core::TagLabel> tags = *club.kitOf("Bittern");
    const auto knife = club.tagLabels({"KMRMQRZM66"}); // Dabchick's, missing since training
    tags.push_back(knife->front());
    std::erase_if(tags, [](const core::TagLabel& tag) { return tag.name == "bailer"; });
    std::vector<std::filesystem::path> files;
    for (const app::TagScene& scene : app::tagScenes(tags, 5)) {
        const QString file = QStringLiteral("%1/heap-%2.png").arg(folder).arg(files.size());
        if (scene.picture.save(file)) files.emplace_back(file.toStdString());
    }
    return files;
}

const QStringList allThemes{"light", "sun", "dark"};
const QList<QSize> bothSizes{{1280, 800}, {1920, 1080}};
const QStringList oneTheme{"light"};
const QList<QSize> oneSize{{1280, 800}};

bool isSettled(app::MainWindow& window) {
    app::CheckSession* session = window.checkPage().session();
    return session && session->state() && !session->isBusy();
}

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir scratch;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, scratch.path());
    QApplication application(argc, argv);
    QApplication::setOrganizationName("tholepin-screens");
    if (argc != 2 || !QDir().mkpath(argv[1])) {
        QTextStream(stderr) << "usage: desk_screens FOLDER\n";
        return 2;
    }
    app::dress(application, app::paletteOf("light"));

    const std::filesystem::path file = scratch.filePath("club.tholepin").toStdString();
    std::vector<std::filesystem::path> scenes;
    {
        auto club = core::Club::create(file, "Quillmere Lake Rescue");
        if (!club || !club->importRegister(DEMO_CLUB_FOLDER, today(), false)) return 3;
        signCheck(*club, "Grebe", core::Phase::Launch, at("2026-03-14T05:40:00Z"),
                  {"Petra Lund", "Sami Reeve"});
        signCheck(*club, "Grebe", core::Phase::Return, at("2026-03-14T06:20:00Z"),
                  {"Petra Lund", "Sami Reeve"});
        signCheck(*club, "Dabchick", core::Phase::Launch, at("2026-03-14T06:31:00Z"),
                  {"Marta Quill", "Hal Okoro"});
        scenes = scenesOfBittern(*club, scratch.path());
    }

    app::Choosers choosers;
    const QString sheet = QStringLiteral("%1/sheet.pdf").arg(argv[1]);
    choosers.sheetFile = [&](QWidget*, const QString&) { return sheet; };
    app::MainWindow window([] { return at("2026-03-14T06:40:00Z"); }, choosers);
    window.setCameraWanted(false);
    app::WindowPictures screens(window, argv[1]);
    bool isWritten = true;
    window.show();
    isWritten &= screens.take("welcome", oneTheme, oneSize);
    bool isBoard = false;
    QObject::connect(&window, &app::MainWindow::boardShown, &window, [&] { isBoard = true; });
    window.openClub(file);
    if (!waitFor([&] { return isBoard; })) return 3;
    isWritten &= screens.take("board", allThemes, bothSizes);

    window.startCheck("Bittern", core::Phase::Launch);
    waitFor([&] { return isSettled(window); });
    app::CheckSession& session = *window.checkPage().session();
    isWritten &= screens.take("launch-begun", oneTheme, oneSize);
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
    isWritten &= screens.take("launch-sign", allThemes, oneSize);
    session.sign("Tobin Ashe", "Two swimmers drift off");
    auto* save = window.findChild<QPushButton*>("saveSheetButton");
    waitFor([&] { return save->isVisible(); });
    isWritten &= screens.take("launch-signed", oneTheme, oneSize);
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
