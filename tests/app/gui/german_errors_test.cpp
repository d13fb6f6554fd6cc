#include "app/gui/theme/language.h"
#include "app/text/errors.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/exchange/csv_import.h"
#include "core/tag/maker_label.h"
#include "core/tag/tag_code.h"
#include "tests/app/gui/window_story.h"

#include <fstream>
#include <map>
#include <set>
#include <tuple>

namespace {

/// Speaks German until it is gone.
class GermanErrors : public support::WindowStory {
protected:
    void TearDown() override {
        WindowStory::TearDown();
        app::speak("en");
    }

    core::Club opened() {
        auto club = core::Club::open(file());
        EXPECT_TRUE(club);
        return std::move(club).value();
    }
    std::string path(const char* name) const { return (folder() / name).string(); }

    static std::string inGerman(const core::Error& error) {
        app::speak("de");
        const std::string line = app::errorLine(error).toStdString();
        app::speak("en");
        return line;
    }
    static std::string inEnglish(const core::Error& error) { return app::errorLine(error).toStdString(); }
};

} // namespace

TEST_F(GermanErrors, anErrorOfCoreIsGermanInTheGermanWindow) {
    core::Club club = opened();
    const auto check = club.checks().open("Grebe", core::Phase::Launch, moment());
    ASSERT_TRUE(check);
    const std::string knife = "KMC20GKEK9";
    ASSERT_TRUE(club.kit().writeOff(knife, "lost", "Petra Lund", moment()));
    const std::vector<std::tuple<core::Error, std::string, std::string>> said{
        {club.kit().writeOff(knife, "lost", "Petra Lund", moment()).error(),
         "it is written off already; nothing is left to do",
         "es ist schon ausgesondert; es ist nichts mehr zu tun"},
        {club.checks().withdraw(check->check, "K999999998", "torn", moment()).error(),
         "no item of this club has the tag K999999998", "kein Stück dieses Vereins hat den Code K999999998"},
        {club.register_().boat("Swan").error(),
         "there is no boat 'Swan' in this club; the club's boats are: Bittern, Dabchick, Grebe",
         "das Boot „Swan“ gibt es in diesem Verein nicht; die Boote des Vereins sind: Bittern, "
         "Dabchick, Grebe"},
        {club.checks().recordPoint(check->check, "sails", 1, moment()).error(),
         "'sails' is no point of Grebe at the launch; name a point as it stands in points.csv",
         "„sails“ ist kein Prüfpunkt von Grebe (Auslaufen); einen Prüfpunkt nennen, wie er in points.csv "
         "steht"},
        {club.checks().sign(check->check, "Petra Lund", "", moment()).error(),
         "the kit is incomplete; give the reason of an urgent launch",
         "die Ausrüstung ist unvollständig; den Grund für das dringende Auslaufen angeben"},
        {core::Club::open(path("none.tholepin")).error(),
         "there is no such file (" + path("none.tholepin") + "); give the path of a club file, or create one",
         "die Datei gibt es nicht (" + path("none.tholepin") +
             "); eine Vereinsdatei wählen oder eine anlegen"},
        {core::TagCode::parse("k 12").error(),
         "'k 12' has 3 characters where a tag code has 10; type the ten characters under the tag",
         "„k 12“ hat 3 Zeichen, ein Code hat 10; die zehn Zeichen unter dem Etikett tippen"},
        {core::parseMakerLabel("(01)09521101530002", 2026).error(),
         "element (01) of the label: its check digit is wrong in '09521101530002'; compare the text beneath "
         "the maker's symbol, or type the tag code",
         "Element (01) des Etiketts: Prüfziffer falsch in „09521101530002“; mit dem Text unter dem Symbol "
         "des "
         "Herstellers vergleichen oder den Code tippen"},
    };
    for (const auto& [error, english, german] : said) {
        EXPECT_EQ(inEnglish(error), english);
        EXPECT_EQ(inGerman(error), german);
    }
}

TEST_F(GermanErrors, everyFaultOfALabelIsGerman) {
    const std::map<std::string, std::string> faults{
        {"(01)0952", "Länge"},
        {"(01)0952110153000X", "Zeichen"},
        {"(01)09521101530002", "Prüfziffer"},
        {"(11)251300", "Monat"},
        {"(11)250231", "Tag"},
        {"(8003)109521101530001", "erste Ziffer"},
    };
    for (const auto& [label, german] : faults) {
        const auto read = core::parseMakerLabel(label, 2026);
        ASSERT_FALSE(read) << label;
        EXPECT_NE(inGerman(read.error()).find("des Etiketts: " + german + " falsch in"), std::string::npos)
            << inGerman(read.error());
    }
}

TEST_F(GermanErrors, reasonsOfRejectedRowsAreGerman) {
    const std::vector<std::pair<std::string, std::string>> files{
        {"places.csv", "place\nLoft in the shed\n"},
        {"boats.csv", "boat,boat_class\nSwan,\"inflatable\"x\n"},
        {"items.csv", "code,kit_type,boat,place,made\nK12,oar,,,2026-02-30\n,sea anchor in a bag,,,soon\n"
                      "KDVK4H6SRX,oar,Grebe,Loft in the shed,\nBMC20GKEK9,oar,,,\n"},
        {"kit_types.csv", "kit_type,pack,price\nfender,0,\"12,5\"\n"},
        {"log.csv", "boat,code,day,text\nGrebe,KMC20GKEK9,2026-03-01,torn\n"},
        {"moon.csv", "x\n"},
    };
    std::filesystem::create_directory(folder() / "sheets");
    for (const auto& [name, text] : files)
        std::ofstream(folder() / "sheets" / name) << text;
    core::Club club = opened();
    const auto plan = club.register_().importCsv(folder() / "sheets", today(), true);
    ASSERT_TRUE(plan);
    std::set<QString> german;
    for (const core::RejectedRow& row : plan->rejected) {
        const QString english = app::rejectionInWords(row.reason);
        app::speak("de");
        german.insert(app::rejectionInWords(row.reason));
        EXPECT_NE(app::rejectionInWords(row.reason), english);
        app::speak("en");
    }
    for (const char* reason : {
             "„K12“ hat 3 Zeichen, ein Code hat 10: die zehn Zeichen unter dem Etikett tippen",
             "„2026-02-30“ steht nicht im Kalender: 2026-03-14, 2026-03 oder 2026 schreiben",
             "„soon“ ist kein Tag: 2026-03-14, 2026-03 oder 2026 schreiben",
             "kit_type „sea anchor in a bag“ steht weder in kit_types.csv noch in der Vereinsdatei: "
             "berichtigen "
             "oder dort eintragen",
             "das Stück gehört zu einem Boot, „Grebe“, und an einen Ort, „Loft in the shed“: eins behalten "
             "und "
             "beim andern - schreiben",
             "eine Packung mit 0 enthält nichts: 1 oder mehr schreiben",
             "„12,5“ ist hier keine Zahl: mit Punkt schreiben, ohne Komma",
             "boat und code sind beide angegeben: genau eins davon ausfüllen",
             "ein Anführungszeichen steht mitten in einer Zelle: die ganze Zelle in Anführungszeichen setzen "
             "und "
             "jedes darin verdoppeln",
         })
        EXPECT_TRUE(german.contains(reason))
            << reason << "\nnot in:\n"
            << QStringList(german.begin(), german.end()).join('\n').toStdString();
}

TEST_F(GermanErrors, aBadCodeTypedInACheckIsRefusedInGerman) {
    app::speak("de");
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GK"); // like no tag of the club
    EXPECT_EQ(said(), "„KMC20GK“ hat 7 Zeichen, ein Code hat 10; die zehn Zeichen unter dem Etikett tippen.");
    typeCode("KMC20GKKE9"); // two neighbours exchanged
    EXPECT_EQ(
        said(),
        "„KMC20GKKE9“ ist kein Etikett dieses Vereins; es ist fast KMC2 0GKE K9: mit den Zeichen unter dem "
        "Etikett vergleichen.");
}
