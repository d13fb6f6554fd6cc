#include "app/gui/gear/setup/set_up_words.h"

#include "app/text/text.h"
#include "app/text/words.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace app {
namespace {

using core::SetUpStep;

struct SetUpText {
    Q_DECLARE_TR_FUNCTIONS(SetUp)
};

std::map<std::string, std::vector<std::string>> byClass(const std::vector<core::UnaskedBoat>& boats) {
    std::map<std::string, std::vector<std::string>> names;
    for (const core::UnaskedBoat& boat : boats)
        names[boat.boatClass].push_back(boat.boat);
    return names;
}

std::string likeOf(const std::string& boatClass, const std::vector<core::UnaskedBoat>& boats) {
    return std::find_if(boats.begin(), boats.end(),
                        [&](const core::UnaskedBoat& boat) { return boat.boatClass == boatClass; })
        ->like;
}

QString kitInWords(const core::SetUpTick& tick) {
    if (tick.isDone) return SetUpText::tr("Every boat has all that its manifest asks for.");
    if (tick.lacking.empty()) return SetUpText::tr("There is no boat yet to fit out.");
    std::vector<std::string> lacking = tick.lacking;
    for (const core::UnaskedBoat& boat : tick.unasked)
        std::erase(lacking, boat.boat);
    QStringList sentences;
    if (!lacking.empty()) sentences << SetUpText::tr("Not all that is asked of it: %1.").arg(listed(lacking));
    for (const auto& [boatClass, boats] : byClass(tick.unasked))
        sentences << (boatClass.empty()
                          ? SetUpText::tr("Nothing is asked of %1, without a class or a list of its own.")
                                .arg(listed(boats))
                          : SetUpText::tr("Nothing is asked of %1: the class “%2” has no list.")
                                .arg(listed(boats), text(boatClass)));
    return sentences.join('\n'); // each class on a line of its own
}

QString boatsInWords(const core::SetUpTick& tick) {
    if (tick.count == 0) return SetUpText::tr("There is no boat yet. Its class says which list it follows.");
    QStringList sentences;
    for (const auto& [boatClass, boats] : byClass(tick.unasked))
        sentences << SetUpText::tr("“%1”, the class of %2, has no list and is almost “%3”: if they are one, "
                                   "write them alike.")
                         .arg(text(boatClass), listed(boats), text(likeOf(boatClass, tick.unasked)));
    if (sentences.isEmpty())
        sentences << counted(tick.count, QT_TRANSLATE_N_NOOP("Words", "%n boat is in the register."),
                             QT_TRANSLATE_N_NOOP("Words", "%n boats are in the register."));
    return sentences.join('\n'); // each class on a line of its own
}

QString rulesInWords(const core::SetUpTick& tick) {
    if (tick.isDone) return SetUpText::tr("No rule is an example any more.");
    if (tick.count == 0)
        return SetUpText::tr("No kit type has a rule yet: how long it lasts, when it is looked at.");
    return counted(
        tick.count,
        QT_TRANSLATE_N_NOOP("Words", "%n rule is still an example: put your maker's and your club's in its "
                                     "place."),
        QT_TRANSLATE_N_NOOP("Words", "%n rules are still examples: put your makers' and your club's in "
                                     "their place."));
}

} // namespace

QString stepInWords(SetUpStep step) {
    switch (step) {
    case SetUpStep::Boats:
        return SetUpText::tr("boats");
    case SetUpStep::People:
        return SetUpText::tr("people");
    case SetUpStep::Kit:
        return SetUpText::tr("kit of each boat");
    case SetUpStep::Rules:
        return SetUpText::tr("rules looked at");
    case SetUpStep::Tags:
        return SetUpText::tr("tags printed");
    case SetUpStep::FirstCheck:
        return SetUpText::tr("first check signed");
    }
    return {};
}

QString stateInWords(const core::SetUpTick& tick) {
    switch (tick.step) {
    case SetUpStep::Boats:
        return boatsInWords(tick);
    case SetUpStep::People:
        return tick.isDone
                   ? counted(tick.count, QT_TRANSLATE_N_NOOP("Words", "%n person is in the register."),
                             QT_TRANSLATE_N_NOOP("Words", "%n people are in the register."))
                   : SetUpText::tr("Nobody is there yet who drives, crews or signs.");
    case SetUpStep::Kit:
        return kitInWords(tick);
    case SetUpStep::Rules:
        return rulesInWords(tick);
    case SetUpStep::Tags:
        return tick.isDone ? SetUpText::tr("Tags were printed.")
                           : SetUpText::tr("Each thing needs its tag fixed to it before a check can see it.");
    case SetUpStep::FirstCheck:
        return tick.isDone ? SetUpText::tr("A check was signed.")
                           : SetUpText::tr("Press a boat's strip, show its tags, and sign.");
    }
    return {};
}

QString pressInWords(SetUpStep step) {
    switch (step) {
    case SetUpStep::Boats:
        return SetUpText::tr("Write the boats");
    case SetUpStep::People:
        return SetUpText::tr("Write the people");
    case SetUpStep::Kit:
        return SetUpText::tr("Fit out a boat");
    case SetUpStep::Rules:
        return SetUpText::tr("Look at the rules");
    case SetUpStep::Tags:
        return SetUpText::tr("Print the tags");
    case SetUpStep::FirstCheck:
        return SetUpText::tr("Go to the boats");
    }
    return {};
}

QString setUpInWords(const std::vector<core::SetUpTick>& ticks) {
    QStringList toDo;
    for (const core::SetUpTick& tick : ticks)
        if (!tick.isDone) toDo << stepInWords(tick.step);
    if (toDo.isEmpty()) return SetUpText::tr("All of it is done.");
    return SetUpText::tr("%1 of %2 are done. Still to do: %3.")
        .arg(static_cast<int>(ticks.size()) - toDo.size())
        .arg(ticks.size())
        .arg(listed(toDo));
}

} // namespace app
