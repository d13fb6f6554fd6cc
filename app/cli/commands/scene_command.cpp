#include "app/cli/commands/command.h"

#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/base/error_code.h"
#include "core/club/club_kit.h"

#include "app/cli/json/json_out.h"
#include "app/cli/terminal/progress.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/tag_scene.h"
#include "app/paper/whole_file.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <QBuffer>

#include <filesystem>
#include <memory>

namespace app {
namespace {

struct SceneOptions : CommonOptions {
    std::string boat;
    std::string out;
    std::uint64_t heap = 1;
};

core::Outcome save(const QImage& picture, const std::filesystem::path& file) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    constexpr int quality = 92;
    picture.save(&buffer, "JPEG", quality);
    return writeWholeFile(file, bytes, Paper::Picture);
}

core::Result<ScenePictures> saveScenes(const std::vector<TagScene>& scenes,
                                       const std::filesystem::path& folder) {
    std::error_code failed;
    std::filesystem::create_directories(folder, failed);
    if (failed)
        return core::Error{core::ErrorCode::PictureFolderNotMade, {failed.message()}, folder.string()};
    ScenePictures pictures;
    for (const TagScene& scene : scenes) {
        const QString name = QStringLiteral("scene-%1.jpg").arg(pictures.size() + 1, 2, 10, QLatin1Char('0'));
        const std::filesystem::path file = folder / name.toStdString();
        if (const core::Outcome saved = save(scene.picture, file); !saved) return saved.error();
        pictures.emplace_back(file.string(), scene.inFullView);
    }
    return pictures;
}

void sayScene(const std::string& boat, const ScenePictures& pictures) {
    sayLine(counted(static_cast<int>(pictures.size()), "%n picture of the kit of ",
                    "%n pictures of the kit of ") +
            text(boat) + QStringLiteral(", as the register has it."));
    for (const auto& [file, codes] : pictures)
        sayLine(QStringLiteral("  %1: ").arg(text(file)) +
                counted(static_cast<int>(codes.size()), "%n tag in full view", "%n tags in full view"));
}

std::vector<TagScene> paintedScenes(const std::vector<core::TagLabel>& kit, std::uint64_t seed) {
    Progress progress(QStringLiteral("scene"));
    return tagScenes(kit, seed, [&](double share) { progress.show(share); });
}

int scene(const SceneOptions& options) {
    return withClub(options, core::Club::Access::ReadOnly, [&](core::Club& club) {
        const auto kit = club.kit().labelsOfBoat(options.boat);
        if (!kit) return fail(kit.error());
        if (kit->empty())
            return failWith("the register has no kit of this boat", options.boat,
                            "give its items a home boat first");
        const Painting painting;
        const auto pictures = saveScenes(paintedScenes(*kit, options.heap), options.out);
        if (!pictures) return fail(pictures.error());
        if (options.json)
            say(sceneJson(options.boat, *pictures));
        else
            sayScene(options.boat, *pictures);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addScene(CommandLine& line) {
    auto options = std::make_shared<SceneOptions>();
    Command command = line.add("scene", "pictures of a boat's tags in a heap, to practise and test on",
                               [options] { return scene(*options); });
    takeCommon(command, *options);
    command.text("--boat", options->boat, "the boat whose kit it is", Need::Required);
    command.text("--out", options->out, "folder for the pictures", Need::Required);
    command.number("--heap", options->heap, "another number, another heap");
}

} // namespace app
