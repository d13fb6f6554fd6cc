#include "app/gui/theme/language.h"
#include "tests/app/gui/window_story.h"

#include <QAction>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QSettings>
#include <QXmlStreamReader>

#include <set>

namespace {

/// One entry of a file of translations, as Qt's TS format has it (Qt Linguist manual, "TS file format").
struct Entry {
    QString context;
    QString source;
    QString state; ///< "unfinished", "vanished"; empty: done
    QStringList forms;
    bool isCounted = false;
};

std::vector<Entry> entriesOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    std::vector<Entry> entries;
    QString context;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == u"name") context = xml.readElementText();
        if (xml.name() == u"message")
            entries.push_back({context, {}, {}, {}, xml.attributes().value("numerus") == u"yes"});
        if (xml.name() == u"source") entries.back().source = xml.readElementText();
        if (xml.name() == u"numerusform") entries.back().forms << xml.readElementText();
        if (xml.name() == u"translation") {
            entries.back().state = xml.attributes().value("type").toString();
            if (!entries.back().isCounted) entries.back().forms << xml.readElementText();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return entries;
}

std::multiset<QString> placeholdersOf(const QString& text) {
    static const QRegularExpression placeholder(QStringLiteral("%(?:[0-9]+|n)"));
    std::multiset<QString> all;
    for (auto at = placeholder.globalMatch(text); at.hasNext();)
        all.insert(at.next().captured());
    return all;
}

QString germanFile() {
    return QStringLiteral(TRANSLATIONS_FOLDER "/tholepin_de.ts");
}

std::string nameOf(const Entry& entry) {
    return (entry.context + ": " + entry.source).toStdString();
}

/// Speaks German until it is gone.
class Translation : public support::WindowStory {
protected:
    void TearDown() override {
        WindowStory::TearDown();
        app::speak("en");
        QSettings().remove("look/language");
    }

    void chooseInMenu(const char* action) {
        auto* chosen = window().findChild<QAction*>(action);
        ASSERT_NE(chosen, nullptr);
        chosen->trigger();
    }
};

} // namespace

TEST_F(Translation, placeholdersAreFoundInATextThatHasThem) {
    EXPECT_EQ(placeholdersOf("%1 of %2, %n"), (std::multiset<QString>{"%1", "%2", "%n"}));
    EXPECT_NE(placeholdersOf("%1 of %2"), placeholdersOf("%1 von"));
}

TEST_F(Translation, germanHasNoUnfinishedEntryAndKeepsEveryPlaceholder) {
    const auto entries = entriesOf(germanFile());
    EXPECT_GT(entries.size(), 350u);
    for (const Entry& entry : entries) {
        EXPECT_TRUE(entry.state.isEmpty()) << nameOf(entry) << " is " << entry.state.toStdString();
        // German has two forms: one, and any other number (Qt Linguist manual, "Plural rules").
        EXPECT_EQ(entry.forms.size(), entry.isCounted ? 2 : 1) << nameOf(entry);
        for (const QString& form : entry.forms) {
            EXPECT_FALSE(form.isEmpty()) << nameOf(entry);
            EXPECT_EQ(placeholdersOf(form), placeholdersOf(entry.source)) << nameOf(entry);
        }
    }
}

/// Qt's own tool goes through the sources anew: what it finds is what is translated, neither more nor less.
TEST_F(Translation, sourcesHoldNothingThatIsNotInTheFile) {
    const QString copy = QString::fromStdString((folder() / "found_de.ts").string());
    ASSERT_TRUE(QFile::copy(germanFile(), copy));
    QProcess lupdate;
    lupdate.setWorkingDirectory(SOURCE_FOLDER);
    lupdate.start(LUPDATE, {"-I", ".", "-locations", "none", "@app/translations/sources.lst", "-ts", copy});
    ASSERT_TRUE(lupdate.waitForFinished(60000));
    ASSERT_EQ(lupdate.exitCode(), 0) << lupdate.readAllStandardError().toStdString();
    const auto entries = entriesOf(copy);
    EXPECT_EQ(entries.size(), entriesOf(germanFile()).size());
    for (const Entry& entry : entries)
        EXPECT_TRUE(entry.state.isEmpty()) << nameOf(entry) << " is " << entry.state.toStdString();
}

TEST_F(Translation, boardAndCheckSpeakGerman) {
    app::speak("de");
    openWindow();
    const auto* strip = window().findChild<app::BoatStrip*>("boatStrip Grebe");
    ASSERT_NE(strip, nullptr);
    EXPECT_TRUE(strip->accessibleName().startsWith("Grebe: nicht klar. Öffnet: Auslaufprüfung"))
        << strip->accessibleName().toStdString();
    openBoat("Grebe");
    EXPECT_EQ(child<QLabel>("phaseLabel")->text(), "Auslaufprüfung");
    typeCode("PWX3VJVX6Q");
    EXPECT_EQ(said(), "Petra Lund ist an Bord.");
    EXPECT_TRUE(outcome().startsWith("Ausrüstung unvollständig: ")) << outcome().toStdString();
    EXPECT_TRUE(outcome().contains(QRegularExpression("[2-9] Prüfpunkte offen"))) << outcome().toStdString();
}

TEST_F(Translation, languageIsChosenInTheMenuInTheMidstOfACheckAndKept) {
    openWindow();
    openBoat("Grebe");
    typeCode("KMC20GKEK9");
    EXPECT_TRUE(said().startsWith("Found: ")) << said().toStdString();
    chooseInMenu("language de");
    ASSERT_TRUE(support::waitFor([&] {
        const app::CheckSession* session = window().checkPage().session();
        return app::spokenLanguage() == "de" && session && session->state();
    }));
    EXPECT_EQ(window().checkPage().boat(), "Grebe");
    EXPECT_EQ(markOf("KMC20GKEK9"), app::Mark::Found);
    EXPECT_TRUE(outcome().startsWith("Ausrüstung unvollständig")) << outcome().toStdString();
    EXPECT_EQ(app::wantedLanguage(), "de");
    chooseInMenu("language en");
    ASSERT_TRUE(support::waitFor([&] { return app::spokenLanguage() == "en" && child("signButton"); }));
    EXPECT_EQ(app::wantedLanguage(), "en");
}

TEST_F(Translation, unknownLanguageIsEnglish) {
    app::speak("tlh");
    EXPECT_EQ(app::spokenLanguage(), "en");
}
