#include "app/gui/theme/language.h"
#include "app/text/error_words.h"
#include "app/text/sentences.h"
#include "core/club/club_checks.h"
#include "core/club/club_kit.h"
#include "core/club/club_register.h"
#include "core/exchange/csv_import.h"
#include "core/tag/maker_label.h"
#include "core/tag/tag_code.h"
#include "tests/app/gui/window_story.h"

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>

#include <algorithm>
#include <fstream>
#include <map>
#include <set>
#include <tuple>

namespace {

/// The string literals of a C++ source, neighbours joined as the compiler joins them.
QStringList literalsOf(const QString& source) {
    static const QRegularExpression token(
        R"re(#include[^\n]*|//[^\n]*|'(?:[^'\\\n]|\\.)'|("(?:[^"\\\n]|\\.)*"(?:\s*"(?:[^"\\\n]|\\.)*")*))re");
    static const QRegularExpression seam(R"("\s*")");
    QStringList all;
    for (auto at = token.globalMatch(source); at.hasNext();)
        if (const QString written = at.next().captured(1); !written.isEmpty())
            all << written.mid(1, written.size() - 2).remove(seam);
    return all;
}

/// Reads like words of a sentence: not SQL, not a format of digits, not one name of a column.
bool isSentence(const QString& literal) {
    static const QRegularExpression words(QStringLiteral("[a-z][,:;]? [a-z0-9{'`(]|\\} [a-z]"));
    static const QRegularExpression sql(
        QStringLiteral("\\b(SELECT|INSERT|UPDATE|DELETE|PRAGMA|WHERE|FROM|ORDER BY|JOIN|excluded)\\b"));
    return literal.contains(words) && !literal.contains(sql);
}

/// Words of core that no error is made of.
const std::set<QString> noErrors{
    "air temperature",
    "water temperature",
    "atmospheric pressure",
    "gear officer",                                             // a role, in people.csv
    "written off",                                              // a state, in items.csv
    "id, device, seq, at_utc, by, kind, body, prev_hash, hash", // columns of the record
    "instant device number",
};

/// Literals that core makes a sentence of with others, and such a sentence.
const std::multimap<QString, QString> pieces{
    {"{} {}: write 2026-03-14, 2026-03 or 2026", "'soon' is no day: write 2026-03-14, 2026-03 or 2026"},
    {"is no day", "'soon' is no day: write 2026-03-14, 2026-03 or 2026"},
    {"is not in the calendar", "'2026-02-30' is not in the calendar: write 2026-03-14, 2026-03 or 2026"},
    {"{} is no tag code of {}: write one that begins with {}",
     "'B' is no tag code of kit: write one that begins with K"},
    {"a boat", "'K' is no tag code of a boat: write one that begins with B"},
    {"a person", "'K' is no tag code of a person: write one that begins with P"},
    {"{} has {} {} already: {}", "'Coot' has the tag 'B' already: correct one of them"},
    {"the line of ", "the line of rope was changed meanwhile"},
    {"the point {}", "the point hull was changed meanwhile"},
    {" was changed meanwhile", "the point hull was changed meanwhile"},
    {"the tag", "'Coot' has the tag 'B' already: correct one of them"},
    {"this gtin and the serial", "'K' has this gtin and the serial 'S-1' already: correct one of them"},
    {"correct one of them", "'Coot' has the tag 'B' already: correct one of them"},
    {"{} of {} and {} is given: fill in exactly one of them",
     "each of boat and code is given: fill in exactly one of them"},
    {"{} of {} and {} is given: fill in exactly one of them",
     "none of boat and code is given: fill in exactly one of them"},
    {"no life rule {} {} of kit_type {} in life_rules.csv or in the club file: correct it or add it there",
     "no life rule 'weigh' without a part of kit_type 'radio' in life_rules.csv or in the club file: correct "
     "it or add it there"},
    {"without a part", "no life rule 'weigh' without a part of kit_type 'radio' in life_rules.csv or in the "
                       "club file: correct it or add it there"},
    {"for the part ", "no life rule 'weigh' for the part 'cell' of kit_type 'radio' in life_rules.csv or in "
                      "the club file: correct it or add it there"},
    {"has {} characters where a tag code has {}", "'K1' has 2 characters where a tag code has 10"},
    {"does not begin with K, B, P, C or S", "'X' does not begin with K, B, P, C or S"},
    {"holds a character that no tag code has", "'K' holds a character that no tag code has"},
    {"fails its check character", "'K' fails its check character"},
};

const QRegularExpression placeholder(QStringLiteral("\\{[^}]*\\}"));

/// Is the literal in that sentence, with anything where it has placeholders.
bool isIn(const QString& sentence, const QString& literal) {
    QStringList fixed;
    for (const QString& part : literal.split(placeholder))
        fixed << QRegularExpression::escape(part);
    return sentence.contains(QRegularExpression(fixed.join(QStringLiteral(".+"))));
}

bool isKnown(const QString& literal) {
    const auto [first, last] = pieces.equal_range(literal);
    for (auto piece = first; piece != last; ++piece)
        if (!isIn(piece->second, literal) || app::knownInWords(piece->second) != piece->second) return false;
    if (first != last) return true;
    QString sentence = literal;
    sentence.replace(placeholder, QStringLiteral("x"));
    if (sentence.endsWith(u' ')) sentence += u'x'; // what the system says comes behind
    return app::knownInWords(sentence) == sentence;
}

/// The sentences in a source of core that the table does not know.
QStringList unknownIn(const QString& source) {
    QStringList unknown;
    for (const QString& literal : literalsOf(source))
        if (isSentence(literal) && !noErrors.contains(literal) && !isKnown(literal)) unknown << literal;
    return unknown;
}

QString readAll(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

/// Speaks German until it is gone.
class ErrorWords : public support::WindowStory {
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

TEST_F(ErrorWords, everySentenceOfCoreIsInTheTable) {
    int sentences = 0;
    QDirIterator files(SOURCE_FOLDER "/core", {"*.cpp", "*.h"}, QDir::Files, QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QString source = readAll(files.next());
        const QStringList all = literalsOf(source);
        sentences += static_cast<int>(std::count_if(all.begin(), all.end(), isSentence));
        for (const QString& literal : unknownIn(source))
            ADD_FAILURE() << files.fileName().toStdString() << " says “" << literal.toStdString()
                          << "”: give it a row in app/text/error_table_*.cpp, and its German";
    }
    EXPECT_GT(sentences, 200) << "the sources were not read";
}

TEST_F(ErrorWords, aSentenceThatIsNotInTheTableIsNoticed) {
    EXPECT_EQ(unknownIn(R"(return notFound(fmt::format("there is no moon over {}", name), "");)"),
              QStringList{"there is no moon over {}"});
    EXPECT_EQ(unknownIn("refuse(kind, file, \"the file is \"\n   \"wet\", \"dry it first\"); // or not"),
              (QStringList{"the file is wet", "dry it first"}));
    EXPECT_EQ(unknownIn("return fmt::format(\"the tide is out: \" + failure);"),
              QStringList{"the tide is out: "});
    EXPECT_EQ(
        unknownIn("// \"a remark is no sentence\"\nrefuse(kind, file, \"the file exists\", \"correct \"\n"
                  "\"the name\"); run(\"SELECT code FROM item WHERE boat = ?\");"),
        QStringList());
}

TEST_F(ErrorWords, aSentenceOfCoreIsGermanAndInEnglishWhatItWas) {
    core::Club club = opened();
    const auto check = club.checks().open("Grebe", core::Phase::Launch, moment());
    ASSERT_TRUE(check);
    const std::string knife = "KMC20GKEK9";
    ASSERT_TRUE(club.kit().writeOff(knife, "lost", "Petra Lund", moment()));
    const std::vector<std::tuple<core::Error, std::string, std::string>> said{
        {club.kit().writeOff(knife, "lost", "Petra Lund", moment()).error(),
         "it is written off already; nothing is left to do",
         "es ist schon ausgemustert; es ist nichts mehr zu tun"},
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

/// The reasons of GS1 faults are single words, which the reading of the sources does not find.
TEST_F(ErrorWords, everyFaultOfALabelIsGerman) {
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

TEST_F(ErrorWords, whatTheTableDoesNotKnowStaysAsItIs) {
    EXPECT_EQ(inGerman({core::ErrorKind::BadInput, "the moon is full: wait", "a place", "look up"}),
              "the moon is full: wait (a place); look up");
    // Names are the club's own, also when they hold what a sentence is made of.
    EXPECT_EQ(
        inGerman({core::ErrorKind::NotFound, "there is no boat '%2 in this club' in this club", {}, {}}),
        "das Boot „%2 in this club“ gibt es in diesem Verein nicht");
    EXPECT_EQ(inGerman({core::ErrorKind::BadInput, "the folder cannot be made: oil on the disk", {}, {}}),
              "the folder cannot be made: oil on the disk");
    EXPECT_EQ(
        inGerman({core::ErrorKind::DiskFailed, "the file cannot be made: No space left on device", {}, {}}),
        "die Datei lässt sich nicht anlegen: kein Platz mehr");
    EXPECT_EQ(inGerman({core::ErrorKind::DiskFailed, "the file cannot be made: oil on the disk", {}, {}}),
              "die Datei lässt sich nicht anlegen: oil on the disk");
}

TEST_F(ErrorWords, reasonsOfRejectedRowsAreGerman) {
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
        EXPECT_EQ(app::coreInWords(row.reason).toStdString(), row.reason) << "English is what it was";
        app::speak("de");
        german.insert(app::coreInWords(row.reason));
        EXPECT_NE(app::coreInWords(row.reason).toStdString(), row.reason);
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

TEST_F(ErrorWords, aBadCodeTypedInACheckIsRefusedInGerman) {
    app::speak("de");
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK");
    EXPECT_EQ(said(),
              "„KMC20GKEK“ hat 9 Zeichen, ein Code hat 10; die zehn Zeichen unter dem Etikett tippen.");
    typeCode("KMC20GKKE9"); // two neighbours exchanged
    EXPECT_EQ(
        said(),
        "„KMC20GKKE9“ passt nicht zu seinem Prüfzeichen; zwei Nachbarzeichen sind vielleicht vertauscht, "
        "gemeint war dann KMC2 0GKE K9.");
}
