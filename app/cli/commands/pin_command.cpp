#include "app/cli/commands/command.h"
#include "app/cli/commands/commands.h"
#include "app/cli/commands/options.h"
#include "app/cli/commands/pin_file.h"
#include "core/base/error_code.h"
#include "core/club/club_pins.h"
#include "core/club/club_register.h"

#include "app/cli/commands/check_input.h"
#include "app/cli/json/pin_json.h"
#include "app/cli/terminal/terminal.h"
#include "app/text/text.h"

#include <memory>
#include <optional>

namespace app {
namespace {

struct PinOptions : CommonOptions {
    std::string act; ///< set, clear, reset
    std::string person;
    std::string byPinFile;
};

/// Given by that person, or by whoever does it.
core::Outcome prove(core::Club& club, const PinOptions& options, const std::string& file,
                    const std::string& by, std::optional<core::Pin>& own) {
    if (file.empty()) return core::Done{};
    auto pin = pinFrom(file);
    if (!pin) return pin.error();
    if (!by.empty() && by != options.person) return club.pins().unlock(by, *pin);
    own.emplace(std::move(*pin));
    return core::Done{};
}

core::Outcome setPin(core::Club& club, const PinOptions& options, const std::string& by) {
    if (options.pinFile == "-" && options.byPinFile == "-")
        return core::Error{core::ErrorCode::PinFileWithCodes, {}, "--by-pin-file"};
    const auto fresh = pinFrom(options.pinFile);
    if (!fresh) return fresh.error();
    std::optional<core::Pin> own;
    if (const core::Outcome proven = prove(club, options, options.byPinFile, by, own); !proven) return proven;
    return club.pins().set(options.person, *fresh, by, own ? &*own : nullptr);
}

core::Outcome clearPin(core::Club& club, const PinOptions& options, const std::string& by) {
    std::optional<core::Pin> own;
    if (const core::Outcome proven = prove(club, options, options.pinFile, by, own); !proven) return proven;
    return club.pins().clear(options.person, by, own ? &*own : nullptr);
}

void sayPin(const core::Club& club, const PinOptions& options) {
    const QString person = text(options.person);
    if (options.act == "set")
        sayLine(
            QStringLiteral("%1 has a new PIN. It keeps honest people from slips on a shared machine; whoever "
                           "has the file can read it.")
                .arg(person));
    else
        sayLine(QStringLiteral("%1 has no PIN any more.").arg(person));
    if (options.act == "reset") sayLine(QStringLiteral("The board tells it for 30 days."));
    const auto officers = club.pins().officers();
    sayLine(
        officers.empty()
            ? QStringLiteral("No gear officer has a PIN: everything is open to everybody.")
            : QStringLiteral("A gear officer's acts need the PIN of %1.").arg(texts(officers).join(", ")));
}

int pin(PinOptions options) {
    if (options.act == "set" && options.pinFile.empty())
        return failWith("the new PIN is missing", "--pin-file", "give a file, or - for standard input");
    if (options.act == "reset" && !options.pinFile.empty())
        return failWith("a reset takes the PIN away", "--pin-file",
                        "set a new one afterwards with `pin set`");
    if (options.act != "set" && !options.byPinFile.empty())
        return failWith("only `pin set` takes a PIN besides", "--by-pin-file", "give it with --pin-file");
    return withClubOn(options, core::Club::Access::ReadWrite, [&](core::Club& club, core::Moment moment) {
        const auto person = findPerson(club.register_().people(), options.person, "--person",
                                       [](const core::Person&) { return true; });
        if (!person) return fail(person.error());
        options.person = *person;
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        const core::Outcome done = options.act == "set"     ? setPin(club, options, *by)
                                   : options.act == "clear" ? clearPin(club, options, *by)
                                                            : club.pins().reset(*person, *by);
        if (!done) return fail(done.error());
        if (options.json)
            say(pinJson(options.act, *person, club.pins().officers()));
        else
            sayPin(club, options);
        return static_cast<int>(ExitFine);
    });
}

struct SigningOptions : CommonOptions {
    std::string proven;
};

int signing(const SigningOptions& options) {
    const auto access = options.proven.empty() ? core::Club::Access::ReadOnly : core::Club::Access::ReadWrite;
    return withClubOn(options, access, [&](core::Club& club, core::Moment moment) {
        const auto by = byWhom(club, options.by, moment.today);
        if (!by) return fail(by.error());
        if (!options.proven.empty())
            if (const auto done = club.pins().proveSignatures(options.proven == "yes", *by); !done)
                return fail(done.error());
        const bool isAsked = club.pins().areSignaturesProven();
        if (options.json)
            say(signingJson(isAsked));
        else
            sayLine(isAsked ? QStringLiteral("Whoever has a PIN gives it when signing a check.")
                            : QStringLiteral("A check is signed without a PIN."));
        return static_cast<int>(ExitFine);
    });
}

} // namespace

void addPin(CommandLine& line) {
    auto options = std::make_shared<PinOptions>();
    options->isPinOfOfficer = false; // it proves by itself
    Command command = line.add("pin", "a person's PIN: set, clear, or reset when it is lost",
                               [options] { return pin(*options); });
    command.choice("ACT", options->act, {"set", "clear", "reset"}, "set, clear or reset", Need::Required);
    takeCommon(command, *options);
    command.text("--person", options->person, "whose it is", Need::Required);
    command.text(
        "--pin-file", options->pinFile,
        "set: the new PIN; clear: that of --by, or of the person; a file of one line, or - for standard "
        "input",
        Need::NotEmpty);
    command.text("--by", options->by, "who does it", Need::NotEmpty);
    command.text("--by-pin-file", options->byPinFile,
                 "set: the PIN of --by, or the person's own until now; likewise", Need::NotEmpty);
}

void addSigning(CommandLine& line) {
    auto options = std::make_shared<SigningOptions>();
    Command command = line.add("signing", "whether those who have a PIN give it when they sign a check",
                               [options] { return signing(*options); });
    takeCommon(command, *options);
    command.choice("--proven", options->proven, {"yes", "no"}, "yes: they do from now on; no: nobody does");
    takeOfficer(command, *options, "who decides it");
}

} // namespace app
