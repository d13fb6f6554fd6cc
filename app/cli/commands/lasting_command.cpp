#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "core/club/club_plans.h"

#include "app/cli/json/plan_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/cautions.h"
#include "app/text/plan_sentences.h"
#include "app/text/text.h"
#include "core/plan/lasting/kit_life.h"

#include <memory>

namespace app {
namespace {

void sayLives(const std::vector<core::KitLife>& lives) {
    if (lives.empty()) return sayLine(QStringLiteral("The club has no kit yet."));
    std::vector<QStringList> table;
    for (const core::KitLife& life : lives) {
        table.push_back(
            {text(life.kitType), endingsInWords(life), medianInWords(life), weibullInWords(life)});
        for (const core::AllowedLife& allowed : life.allowed)
            table.push_back({QString(), allowedInWords(allowed), QString(), QString()});
    }
    sayText(tableOf({"kit", "record", "lasts", "how it goes"}, table));
    sayLine(lastingCaution());
    sayLine(planCaution());
}

int lasting(const CommonOptions& options) {
    return withClubOn(options, core::Club::Access::ReadOnly, [&](core::Club& club, core::Moment moment) {
        const auto lives = club.plans().kitLives(moment.today);
        if (options.json)
            say(lastingJson(lives, moment.today));
        else
            sayLives(lives);
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addLasting(CommandLine& line) {
    auto options = std::make_shared<CommonOptions>();
    Command command = line.add("lasting", "how long kit of each type really lasts here, beside its rules",
                               [options] { return lasting(*options); });
    takeCommon(command, *options);
    command.more(
        "Kaplan-Meier curves of the club's own kit, and a Weibull fit where there are five endings or more.");
}

} // namespace app
