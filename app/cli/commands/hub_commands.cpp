#include "app/cli/commands/check_input.h"
#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_hub.h"
#include "core/club/district_hub.h"

#include "app/cli/json/hub_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <memory>

namespace app {
namespace {

struct HubOptions : CommonOptions {
    std::string url, club, role;
    bool isDistrict = false;
    bool sendsPrivate = false;
};

constexpr const char* urlHelp =
    "postgresql://role@host/database, without a password: that stands in ~/.pgpass";
constexpr const char* privateHelp = "measures of people are exchanged, too";

int hubPrepare(const HubOptions& options) {
    const auto done = core::districtHub::prepare(options.url);
    if (!done) return fail(done.error());
    if (options.json)
        say(hubPreparedJson(options.url));
    else
        sayLine(QStringLiteral("The hub stands. Next: a role of the database for each club (createuser "
                               "--pwprompt ROLE), and tholepinctl hub add."));
    return ExitFine;
}

int hubAddDistrict(const HubOptions& options) {
    const auto done = core::districtHub::addDistrict(options.url, options.role);
    if (!done) return fail(done.error());
    if (options.json)
        say(hubAddedJson({}, options.role));
    else
        sayLine(QStringLiteral("%1 reads what all clubs have there, but for what is private.")
                    .arg(text(options.role)));
    return ExitFine;
}

int hubAddClub(const HubOptions& options) {
    const auto club = core::districtHub::addClub(options.url, options.club, options.role);
    if (!club) return fail(club.error());
    if (options.json)
        say(hubAddedJson(*club, options.role));
    else
        sayLine(QStringLiteral("%1 connects for %2. Next, on a machine of the club: tholepinctl hub join.")
                    .arg(text(options.role), text(*club)));
    return ExitFine;
}

int hubAdd(const HubOptions& options) {
    if (options.isDistrict == !options.club.empty())
        return failWith("a role is for one club, or for the district", "hub add",
                        "give --club NAME or --district");
    return options.isDistrict ? hubAddDistrict(options) : hubAddClub(options);
}

int hubJoin(const HubOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        if (const auto by = byWhom(club, options.by, moment.today); !by) return fail(by.error());
        const core::HubPlace place{options.url, options.sendsPrivate};
        const core::Outcome done = club.hub().join(place);
        if (!done) return fail(done.error());
        if (options.json)
            say(hubJoinedJson(place));
        else
            sayLine(
                QStringLiteral("This file exchanges with %1 from now on%2. Next: tholepinctl hub exchange.")
                    .arg(text(options.url),
                         options.sendsPrivate ? QStringLiteral(", measures of people included") : QString()));
        return static_cast<int>(ExitFine);
    });
}

QString fetchedWords(const core::FetchedFile& fetched) {
    if (!fetched.place)
        return QStringLiteral("It exchanges with no hub: this role is no club's. With the club's own role: "
                              "tholepinctl hub join.");
    if (!fetched.wasJoined) return QStringLiteral("It exchanges there from now on.");
    return QStringLiteral("The club was joined already, and exchanges as it did: with %1, %2 measures of "
                          "people. To change that: tholepinctl hub join.")
        .arg(text(fetched.place->url),
             fetched.place->sendsPrivate ? QStringLiteral("with") : QStringLiteral("without"));
}

int hubFetch(const HubOptions& options) {
    const auto fetched =
        core::districtHub::fetch({options.url, options.sendsPrivate}, options.club, options.file);
    if (!fetched) return fail(fetched.error());
    noteMade();
    if (options.json)
        say(hubFetchedJson(options.club, options.file, fetched->place));
    else
        sayLine(QStringLiteral("%1 holds all that the hub has of %2. %3")
                    .arg(text(options.file), text(options.club), fetchedWords(*fetched)));
    return ExitFine;
}

} // namespace

void addHub(CommandLine& line) {
    line.addGroup("hub", "exchange of the record by a district's PostgreSQL server");
    auto options = std::make_shared<HubOptions>();
    const auto url = [&](Command& command) { command.file("URL", options->url, urlHelp); };

    Command prepare =
        line.add("hub prepare", "makes schema, roles and policies in the database, or renews them",
                 [options] { return hubPrepare(*options); });
    takeCommon(prepare, *options, Takes::NoFile);
    url(prepare);

    Command add = line.add("hub add", "a club may connect as this role of the database",
                           [options] { return hubAdd(*options); });
    takeCommon(add, *options, Takes::NoFile);
    url(add);
    add.text("--club", options->club, "the club, by its name", Need::NotEmpty);
    add.flag("--district", options->isDistrict, "the role reads all clubs");
    add.text("--role", options->role, "the role, which the database has", Need::Required);

    Command join = line.add("hub join", "this file exchanges with that hub from now on",
                            [options] { return hubJoin(*options); });
    takeCommon(join, *options);
    url(join);
    join.flag("--private", options->sendsPrivate, privateHelp);
    takeOfficer(join, *options, "who joins it");

    Command fetch = line.add("hub fetch", "a new machine's first file, of all that the hub has of the club",
                             [options] { return hubFetch(*options); });
    takeCommon(fetch, *options, Takes::NoFile);
    url(fetch);
    fetch.text("--club", options->club, "the club, by its name", Need::Required);
    fetch.file("FILE", options->file, "the file, which must not exist");
    fetch.flag("--private", options->sendsPrivate, privateHelp);
}

} // namespace app
