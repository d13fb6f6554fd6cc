#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/district_hub.h"

#include "app/cli/json/hub_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/text.h"

#include <algorithm>
#include <memory>

namespace app {
namespace {

struct HubBoatsOptions : CommonOptions {
    std::string url;
};

bool isBoatNotReady(const core::PublishedBoat& boat) {
    return boat.kind == core::BoatCondition::Kind::NotReady;
}

QString conditionWords(core::BoatCondition::Kind kind) {
    switch (kind) {
    case core::BoatCondition::Kind::NotReady:
        return QStringLiteral("not ready");
    case core::BoatCondition::Kind::Out:
        return QStringLiteral("out");
    case core::BoatCondition::Kind::KitReady:
        return QStringLiteral("kit ready");
    }
    return {};
}

void sayBoard(const core::PublishedBoard& board) {
    if (!board.at) return sayLine(QStringLiteral("%1: nothing published yet").arg(text(board.club)));
    if (!board.isReadable)
        return sayLine(
            QStringLiteral("%1, as of %2: ▲ what was published is no board that can be read; publish "
                           "anew on a machine of the club (tholepinctl hub exchange).")
                .arg(text(board.club), text(board.at->iso())));
    sayLine(QStringLiteral("%1, as of %2:").arg(text(board.club), text(board.at->iso())));
    for (const core::PublishedBoat& boat : board.boats) {
        sayLine(QStringLiteral("  %1: %2").arg(text(boat.boat), conditionWords(boat.kind)));
        if (!boat.urgent.empty())
            sayLine(
                QStringLiteral("      launched urgently with the kit incomplete: %1").arg(text(boat.urgent)));
        for (const std::string& reason : boat.reasons)
            sayLine(QStringLiteral("      ▲ %1").arg(text(reason)));
    }
}

int hubBoats(const HubBoatsOptions& options) {
    const auto boards = core::districtHub::boards(options.url);
    if (!boards) return fail(boards.error());
    if (options.json) {
        say(hubBoatsJson(*boards));
    } else {
        for (const core::PublishedBoard& board : *boards)
            sayBoard(board);
        if (boards->empty()) sayLine(QStringLiteral("The hub has no club yet that this role may read."));
        sayLine(boardCaution());
    }
    const bool any = std::any_of(boards->begin(), boards->end(), [](const core::PublishedBoard& board) {
        return !board.isReadable || std::any_of(board.boats.begin(), board.boats.end(), isBoatNotReady);
    });
    return any ? ExitNeedsSomebody : ExitFine;
}

} // namespace

void addHubBoats(CommandLine& line) {
    auto options = std::make_shared<HubBoatsOptions>();
    Command command = line.add("hub boats", "every club's board, from what each machine last published",
                               [options] { return hubBoats(*options); });
    takeCommon(command, *options, Takes::NoFile);
    command.file("URL", options->url,
                 "postgresql://role@host/database, without a password: that stands in ~/.pgpass");
}

} // namespace app
