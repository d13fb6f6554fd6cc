#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/answers/board.h"
#include "core/club/club_hub.h"

#include "app/cli/json/hub_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/errors.h"
#include "app/text/merge_sentences.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"

#include <atomic>
#include <csignal>
#include <memory>

namespace app {
namespace {

struct ExchangeOptions : CommonOptions {
    bool watches = false;
};

/// For the handler of signals, which may touch nothing else.
std::atomic<core::HubLink*> watchedLink = nullptr;

void onSignalToEnd(int) {
    if (core::HubLink* link = watchedLink) link->stop();
}

/// While it lives, Ctrl-C ends the watching, and not the program in the middle of something.
struct EndBySignal {
    explicit EndBySignal(core::HubLink& link) {
        watchedLink = &link;
        for (const int number : {SIGINT, SIGTERM, SIGHUP})
            std::signal(number, onSignalToEnd);
    }
    ~EndBySignal() {
        for (const int number : {SIGINT, SIGTERM, SIGHUP})
            std::signal(number, SIG_DFL);
        watchedLink = nullptr;
    }
};

core::Result<core::Exchanged> exchangeOnce(core::Club& club, core::HubLink& link, core::CalendarDay today) {
    return club.hub().exchange(
        link, today, [](const core::NotReadyReason& reason) { return reasonOf(reason).toStdString(); });
}

int tellExchanged(const core::Exchanged& exchanged, bool asJson) {
    if (asJson) {
        say(exchangedJson(exchanged));
    } else {
        sayLine(QStringLiteral("%1. Sent: %2.")
                    .arg(cameInWords(exchanged.cameIn), counted(exchanged.sent, "%n fact", "%n facts")));
        for (const core::LookAt& each : exchanged.cameIn.lookAt)
            sayLine(QStringLiteral("  ▲ %1.").arg(lookAtInWords(each)));
    }
    return exchanged.cameIn.lookAt.empty() ? ExitFine : ExitNeedsSomebody;
}

/// Until a signal ends it. A hub that is not reached is waited for; whatever else fails wants somebody.
int watch(core::Club& club, const ExchangeOptions& options, core::HubLink& link) {
    using namespace std::chrono_literals;
    const EndBySignal ending(link);
    for (bool isFirst = true, wasReached = true;; isFirst = false) {
        const auto moment = momentOf(options);
        if (!moment) return fail(moment.error());
        const auto exchanged = exchangeOnce(club, link, moment->today);
        const bool isReached = exchanged || exchanged.error().kind() != core::ErrorKind::DiskFailed;
        if (!exchanged && isReached) return fail(exchanged.error());
        if (!exchanged && wasReached) fail(exchanged.error());
        if (exchanged && (isFirst || !wasReached || exchanged->sent > 0 || exchanged->cameIn.facts > 0)) {
            tellExchanged(*exchanged, options.json);
            flushOutput();
        }
        wasReached = isReached;
        if (link.wait(60s) == core::HubLink::Waited::Stopped) return ExitFine;
    }
}

int hubExchange(const ExchangeOptions& options) {
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        core::HubLink link;
        if (options.watches) return watch(club, options, link);
        const auto exchanged = exchangeOnce(club, link, moment.today);
        if (!exchanged) return fail(exchanged.error());
        return tellExchanged(*exchanged, options.json);
    });
}

} // namespace

void addHubExchange(CommandLine& line) {
    auto options = std::make_shared<ExchangeOptions>();
    Command command =
        line.add("hub exchange", "sends the hub what it does not have, and takes in what is new",
                 [options] { return hubExchange(*options); });
    takeCommon(command, *options);
    command.flag("--watch", options->watches,
                 "goes on: each minute, and when another machine has sent something; Ctrl-C ends it");
}

} // namespace app
