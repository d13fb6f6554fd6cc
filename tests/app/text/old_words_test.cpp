#include <gtest/gtest.h>

#include <QDirIterator>
#include <QFile>
#include <QRegularExpression>
#include <QStringList>
#include <QXmlStreamReader>

#include <map>

// Phrases that misled, or of which one language has two: nothing that a person reads has them any more.
namespace {

/// As regular expressions; \b stands only beside plain letters.
const QStringList& oldEnglish() {
    static const QStringList phrases{R"(\bpassed on %1)",
                                     R"(\bhas passed\b)",
                                     R"(\bor remarked\b)",
                                     R"(\bnothing has happened\b)",
                                     R"(\bis the record whole\b)",
                                     R"(\bThe record is whole\b)",
                                     R"(\bThis looks whether\b)",
                                     R"(\bdoes not agree with itself\b)",
                                     R"(\bAt work\b)",
                                     R"(\bnames nothing any more\b)",
                                     R"(\bnames no kit\b)",
                                     R"(\bnone of this club\b)",
                                     R"(\bwhose it is not checked\b)",
                                     R"(\bNobody's own\b)",
                                     R"(\bwith something short\b)",
                                     R"(\blaunch short\b)",
                                     R"(\bwith short kit\b)",
                                     R"(\bLaunched urgent\b)",
                                     R"(\bbefore the cover ends\b)",
                                     R"(\bat any age alike\b)",
                                     R"(\breplaces no look\b)",
                                     R"(^(ahead|sure|Write it|Take it away)$)",
                                     R"(\bin no move\b)",
                                     R"(\bstands already\b)",
                                     R"(\bis none of the choices\b)",
                                     R"(\b(months|days) is none\b)",
                                     R"(\bis no confidence\b)",
                                     R"(\bchance of being short\b)",
                                     R"(\bprevails over one\b)",
                                     R"(\bmaker's range\b)",
                                     R"(%1 of its %2)",
                                     R"(\brescue ready\b)"};
    return phrases;
}

const QStringList& oldGerman() {
    static const QStringList phrases{
        "Startprüfung",
        R"(\b(Auslauf|Rückkehr)?[Cc]hecks?\b)",
        R"(\bAm Werk\b)",
        R"(\bheile?[sr]?\b)",
        "Vorr[aä]ng",
        R"(\bweg damit\b)",
        "niemandem mit Namen",
        "[Aa]usmuster",
        "ausgemustert",
        "Ausgemustert",
        "Bootsbuch",
        "Bucheintr",
        R"(\bins Buch\b)",
        "Bootsliste",
        "aus dem Verkehr",
        R"(\bStarts\b)",
        R"(\bTreibstoff\b)",
        R"(\b([Dd]u|[Dd]ich|[Dd]ir|[Dd]eine?[rnms]?|bist|Schreib|[Ss]ieh|[Gg]ib|Nimm|Lies|Zeig)\b)"};
    return phrases;
}

/// Compiled once: each is looked for in ten thousand texts.
const QRegularExpression& patternOf(const QString& phrase) {
    static std::map<QString, QRegularExpression> patterns;
    const auto [at, isNew] =
        patterns.try_emplace(phrase, phrase, QRegularExpression::UseUnicodePropertiesOption);
    EXPECT_TRUE(at->second.isValid()) << phrase.toStdString();
    if (isNew) at->second.optimize();
    return at->second;
}

QStringList oldWordsIn(const QString& text, const QStringList& phrases) {
    QStringList found;
    for (const QString& phrase : phrases)
        if (patternOf(phrase).match(text).hasMatch()) found << phrase;
    return found;
}

/// The text literals of a source, neighbours joined as the compiler joins them. Comments are left out.
QStringList literalsOf(const QString& source) {
    static const QRegularExpression token(R"re(//[^\n]*|/\*.*?\*/|'(?:\\.|[^'\\])'|"(?:\\.|[^"\\])*"|\S)re",
                                          QRegularExpression::DotMatchesEverythingOption);
    QStringList literals;
    bool isOpen = false;
    for (auto at = token.globalMatch(source); at.hasNext();) {
        const QString word = at.next().captured();
        if (word.startsWith(u"//") || word.startsWith(u"/*")) continue;
        if (!word.startsWith(u'"') || word.size() < 2) {
            isOpen = false;
            continue;
        }
        const QString text = word.mid(1, word.size() - 2);
        if (isOpen)
            literals.last() += text;
        else
            literals << text;
        isOpen = true;
    }
    return literals;
}

QString contentOf(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

/// What the sources give to people, by file.
std::vector<std::pair<QString, QString>> shownTexts() {
    std::vector<std::pair<QString, QString>> texts;
    QDirIterator files(QStringLiteral(SOURCE_FOLDER "/app"), {"*.cpp", "*.h"}, QDir::Files,
                       QDirIterator::Subdirectories);
    while (files.hasNext()) {
        const QString path = files.next();
        for (const QString& literal : literalsOf(contentOf(path)))
            texts.emplace_back(path, literal);
    }
    return texts;
}

struct Told {
    QString source;
    QStringList german;
};

std::vector<Told> germanTexts() {
    QXmlStreamReader xml(contentOf(QStringLiteral(TRANSLATIONS_FOLDER "/tholepin_de.ts")));
    std::vector<Told> texts;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == u"source") texts.push_back({xml.readElementText(), {}});
        if (xml.name() == u"translation" || xml.name() == u"numerusform") {
            const QString text = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            texts.back().german << text;
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return texts;
}

TEST(OldWords, areFoundWhereTheyArePlanted) {
    const QStringList literals = literalsOf(QStringLiteral(
        "// \"is the record whole\"\nsay(tr(\"%1 names \"\n   \"no kit of this club.\"), '\"');"));
    ASSERT_EQ(literals, QStringList{"%1 names no kit of this club."});
    EXPECT_EQ(oldWordsIn(literals[0], oldEnglish()), QStringList{R"(\bnames no kit\b)"});
    EXPECT_EQ(oldWordsIn("Write it", oldEnglish()).size(), 1);
    EXPECT_TRUE(oldWordsIn("Write it off", oldEnglish()).isEmpty()) << "a part of another sentence";
    EXPECT_EQ(oldWordsIn("Zurück zum Check", oldGerman()).size(), 1);
    EXPECT_EQ(oldWordsIn("ein heiles Stück", oldGerman()).size(), 1);
    EXPECT_EQ(oldWordsIn("Sagen, wer du bist", oldGerman()).size(), 1);
    EXPECT_TRUE(oldWordsIn("Prüfpunkte dieser Prüfung, unversehrt, die Einheit", oldGerman()).isEmpty());
}

TEST(OldWords, standInNoTextOfTheProgram) {
    const auto texts = shownTexts();
    EXPECT_GT(texts.size(), 3000u) << "or nothing was read";
    for (const auto& [path, text] : texts) {
        const QStringList found = oldWordsIn(text, oldEnglish());
        EXPECT_TRUE(found.isEmpty()) << path.toStdString() << ": “" << text.toStdString() << "” has "
                                     << found.join(' ').toStdString();
    }
}

TEST(OldWords, standInNoTranslation) {
    const auto texts = germanTexts();
    EXPECT_GT(texts.size(), 1000u) << "or nothing was read";
    for (const Told& text : texts) {
        EXPECT_TRUE(oldWordsIn(text.source, oldEnglish()).isEmpty()) << text.source.toStdString();
        for (const QString& german : text.german) {
            const QStringList found = oldWordsIn(german, oldGerman());
            EXPECT_TRUE(found.isEmpty()) << german.toStdString() << " has " << found.join(' ').toStdString();
        }
    }
}

} // namespace
