#include "app/cli/commands/command.h"

#include "app/cli/commands/commands.h"
#include "core/base/error_code.h"
#include "core/club/club_photos.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/json_out.h"
#include "app/cli/json/record_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/paper/whole_file.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "scanner/files/small_jpeg.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct PhotoOptions : CommonOptions {
    std::string picture;
    std::string entry;
    std::string code;
    std::string show;     ///< hash of one that is there
    std::string takeBack; ///< likewise
    std::string out;
};

int add(const PhotoOptions& options) {
    if (options.picture.empty() || (options.entry.empty() && options.code.empty()))
        return failWith("a photograph is of something", {},
                        "give --entry ID or --code CODE and the picture file, or --show and --out");
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        scanner::SmallJpeg jpeg;
        {
            const LibrariesQuiet quiet;
            jpeg = scanner::smallJpegOf(options.picture, core::ClubPhotos::longestSide,
                                        core::ClubPhotos::mostBytes);
        }
        if (jpeg.error) return fail(fileErrorOf(options.picture, *jpeg.error));
        const std::string bytes = jpeg.bytes.toStdString();
        const auto added = options.code.empty() ? club.photos().addToEntry(options.entry, bytes, *by, moment)
                                                : club.photos().addToItem(options.code, bytes, *by, moment);
        if (!added) return fail(added.error());
        if (options.json)
            say(addedPhotoJson(*added));
        else
            sayLine(QStringLiteral("The photograph %1 is kept: %2 kB.")
                        .arg(text(added->sha256))
                        .arg((added->size + 999) / 1000));
        return static_cast<int>(ExitFine);
    });
}

int show(const PhotoOptions& options) {
    if (options.out.empty() || !options.picture.empty())
        return failWith("it is written to a file", "--show", "give --out and the file's name");
    return withClub(options, core::Club::Access::ReadOnly, [&](core::Club& club) {
        const auto jpeg = club.photos().jpegOf(options.show);
        if (!jpeg) return fail(jpeg.error());
        const core::Outcome done =
            writeWholeFile(options.out, QByteArray::fromStdString(*jpeg), Paper::Picture);
        if (!done) return fail(done.error());
        if (options.json)
            say(fileJson(options.out));
        else
            sayLine(QStringLiteral("Written to %1.").arg(text(options.out)));
        return static_cast<int>(ExitFine);
    });
}

/// Of everything that it is of, or of that entry or item alone.
int takeBack(const PhotoOptions& options) {
    if (!options.picture.empty())
        return failWith("it is there already", "--take-back", "give its hash, and no picture file");
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        auto photos = options.code.empty() ? club.photos().all() : club.photos().ofItem(options.code);
        std::erase_if(photos, [&](const core::Photo& photo) {
            return photo.sha256 != options.takeBack ||
                   (!options.entry.empty() && photo.entry != options.entry) ||
                   (!options.code.empty() && !photo.entry.empty());
        });
        if (photos.empty()) return fail({core::ErrorCode::NoSuchPhoto, {options.takeBack}});
        std::vector<std::string> ids;
        for (const core::Photo& photo : photos)
            ids.push_back(photo.id);
        const core::Outcome done = club.photos().takeBack(ids, *by, moment);
        if (!done) return fail(done.error());
        if (options.json)
            say(takenBackPhotosJson(photos));
        else
            sayLine(QStringLiteral(
                "The photograph is shown there no more. That it was added stays in the record."));
        return static_cast<int>(ExitFine);
    });
}

int photo(const PhotoOptions& options) {
    if (!options.takeBack.empty()) return takeBack(options);
    return options.show.empty() ? add(options) : show(options);
}

} // namespace

void addPhoto(CommandLine& line) {
    auto options = std::make_shared<PhotoOptions>();
    Command command = line.add("photo", "keeps a photograph of an item or of a log entry, or writes one out",
                               [options] { return photo(*options); });
    takeCommon(command, *options);
    command.more("A photograph is kept as an upright JPEG of at most 1280 pixels and 300 kB, without place, "
                 "time or camera.");
    command.text("PICTURE", options->picture, "the picture file");
    command.text("--entry", options->entry, "id of the log entry, as `log` shows it", Need::NotEmpty);
    command.text("--code", options->code, "the item's tag code", Need::NotEmpty);
    command.notTogether("--entry", "--code");
    command.text("--by", options->by, "who took it", Need::NotEmpty);
    command.text("--show", options->show, "the hash of a photograph that is kept", Need::NotEmpty);
    command.text(
        "--take-back", options->takeBack,
        "the hash of a photograph of the wrong thing: it is of that no more; with --entry or --code, "
        "of that alone",
        Need::NotEmpty);
    command.text("--out", options->out, "the JPEG that it is written to", Need::NotEmpty);
    command.notTogether("--show", "--entry");
    command.notTogether("--show", "--code");
    command.notTogether("--show", "--take-back");
}

} // namespace app
