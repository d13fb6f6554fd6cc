#include "tests/app/gui/story_hand.h"

#include "app/gui/check/check_page.h"
#include "app/gui/club/check_session.h"
#include "core/answers/board.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_kit.h"
#include "core/club/club_record.h"
#include "core/club/club_register.h"
#include "tests/app/gui/foreign_tags.h"
#include "tests/app/gui/shown_texts.h"
#include "tests/support/scratch_folder.h"

#include <QFile>
#include <QLabel>
#include <QPushButton>
#include <QRegularExpression>
#include <QStackedWidget>

#include <functional>
#include <memory>
#include <set>
#include <vector>

using support::StoryHand;
using support::waitFor;

namespace {

struct Member {
    const char* name;
    const char* role;
};

constexpr Member members[] = {{"Joss Iveny", "gear officer"}, {"Marta Quill", "driver"},
                              {"Tobin Ashe", "driver"},       {"Sami Reeve", "crew"},
                              {"Petra Lund", "crew"},         {"Hal Okoro", "crew"}};

/// docs/first-hour.md as somebody does it who has only that: from no club file to a signed launch check.
class FirstHour : public testing::TestWithParam<StoryHand::Way> {
protected:
    void SetUp() override {
        QApplication::setDoubleClickInterval(20); // is waited out now and then
        app::Choosers choosers;
        choosers.saveFile = [this](QWidget*, const QString&) { return pathOf("tags.pdf"); };
        m_window = std::make_unique<app::MainWindow>(
            [] {
                return core::Moment{*core::Instant::parse("2026-03-14T06:40:00Z"),
                                    *core::CalendarDay::from(2026, 3, 14)};
            },
            choosers);
        m_window->setCameraWanted(false);
        m_hand = std::make_unique<StoryHand>(*m_window, GetParam());
        m_window->show();
        m_window->activateWindow();
        ASSERT_TRUE(waitFor([&] { return m_window->isActiveWindow(); }));
    }
    void TearDown() override {
        m_window.reset();
        QApplication::setDoubleClickInterval(400);
    }

    QString pathOf(const char* name) const { return QString::fromStdString((m_folder / name).string()); }
    core::Club stored() const {
        auto club = core::Club::open(m_folder / "lake.tholepin", core::Club::Access::ReadOnly);
        EXPECT_TRUE(club);
        return std::move(club).value();
    }
    StoryHand& hand() { return *m_hand; }
    /// Notes every text that comes into view from now on.
    void noteTexts() {
        m_hand->setLook([this] {
            for (const QString& each : support::textsIn(*m_window))
                m_texts.insert(QString(each).remove('&').trimmed());
        });
    }
    /// Whether a name of the guide came into view; "Sign: …" stands for whatever follows.
    bool wasShown(const QString& name) const {
        const QString open = name.chopped(name.endsWith(u'…') ? 1 : 0);
        return std::any_of(m_texts.begin(), m_texts.end(), [&](const QString& shown) {
            return shown == name || (open != name && shown.startsWith(open)) ||
                   shown.startsWith(name + " with ") || shown.startsWith(name + ".");
        });
    }
    /// In view by that name, and says that sooner or later.
    void expectSaid(const char* label, const QString& words) {
        QString said;
        EXPECT_TRUE(waitFor([&] {
            for (const auto* each : m_window->findChildren<QLabel*>(label))
                if (each->isVisible()) said = each->text();
            return said.contains(words);
        })) << label
            << " says: " << said.toStdString();
    }

    void startTheClub();
    void writeThePeople();
    void writeTheBoats();
    void writeKitType(const QString& name);
    void writeTheServiceRule();
    void askForTheKit(const QString& kitType);
    void takeTheEnginesTime();
    void fitOut(const QString& boat, const char* const (&owners)[2]);
    void saveTheTags();
    void launch();
    void scanTheKitOf(const std::string& boat);
    void doThePoints();
    void sign();
    /// Each builds on the one before, so the first that fails is the last.
    static void inTurn(const std::vector<std::function<void()>>& steps) {
        for (const auto& step : steps)
            if (!HasFailure()) step();
    }
    void toFitOut() {
        toSetUp();
        hand().press("setUpButton 2");
    }
    void toSetUp() { hand().showPage("Set up", "Ctrl+Alt+8"); }
    app::CheckSession* session() { return m_window->checkPage().session(); }
    void settle() {
        ASSERT_TRUE(waitFor([&] { return session() && session()->state() && !session()->isBusy(); }));
    }

    support::ScratchFolder m_folder;

private:
    std::unique_ptr<app::MainWindow> m_window;
    std::unique_ptr<StoryHand> m_hand;
    std::set<QString> m_texts;
};

/// What the guide *names*: each between two stars.
QStringList namesOfGuide() {
    QFile guide(QStringLiteral(SOURCE_FOLDER "/docs/first-hour.md"));
    EXPECT_TRUE(guide.open(QIODevice::ReadOnly));
    QStringList names;
    static const QRegularExpression name(QStringLiteral(R"(\*([^*\n]+)\*)"));
    for (const auto& found : name.globalMatch(QString::fromUtf8(guide.readAll())))
        names << found.captured(1);
    names.removeDuplicates();
    return names;
}

void FirstHour::startTheClub() {
    hand().fill("clubNameEdit", "Quillmere Lake Rescue");
    hand().fill("clubFileEdit", pathOf("lake.tholepin"));
    hand().pick("clubBegins inflatable");
    hand().press("newClubButton");
    expectSaid("setUpSummaryLabel", "0 of 6 are done");
}

void FirstHour::writeThePeople() {
    hand().press("setUpButton 0");
    for (const Member& member : members) {
        hand().press("registerNewButton");
        hand().fill("cell_person", member.name);
        hand().choose("cell_role", member.role);
        hand().fill("cell_mass_kg", "75");
        hand().press("registerSaveButton");
        expectSaid("registerSaidLabel", QString(member.name) + ": saved");
        hand().waitForRow("registerTable", member.name);
    }
    EXPECT_EQ(stored().register_().people().size(), std::size(members));
}

void FirstHour::writeTheBoats() {
    toSetUp();
    hand().press("setUpButton 1");
    for (const char* boat : {"Dabchick", "Bittern"}) {
        hand().press("registerNewButton");
        hand().fill("cell_boat", boat);
        hand().fill("cell_boat_class", "inflatable");
        hand().press("registerSaveButton");
        expectSaid("registerSaidLabel", QString(boat) + ": saved");
        hand().waitForRow("registerTable", boat);
    }
    EXPECT_EQ(stored().register_().boats().size(), 2u);
}

void FirstHour::writeKitType(const QString& name) {
    hand().choose("registerSheetBox", "kit types");
    hand().press("registerNewButton");
    hand().fill("cell_kit_type", name);
    hand().press("registerSaveButton");
    expectSaid("registerSaidLabel", name + ": saved");
    hand().waitForRow("registerTable", name);
}

void FirstHour::writeTheServiceRule() {
    hand().chooseRow("registerTable", "first aid kit");
    hand().press("registerNewRuleButton");
    hand().fill("cell_rule", "yearly service");
    hand().choose("cell_kind", "service");
    hand().fill("cell_n", "12");
    hand().fill("cell_source", "decision of the club, March 2026");
    hand().press("registerSaveButton");
    expectSaid("registerSaidLabel", "first aid kit, yearly service: saved");
}

void FirstHour::askForTheKit(const QString& kitType) {
    hand().showPage("Manifests", "Ctrl+Alt+1");
    hand().press("manifestAddButton");
    hand().choose("manifestKitTypeBox", kitType);
    hand().press("manifestLineWriteButton");
    expectSaid("manifestSaidLabel", kitType.mid(1) + ": 1 asked from now on");
    hand().waitForRow("manifestTable", kitType);
}

/// The engine's manual says how long; the test does not wait for a minute.
void FirstHour::takeTheEnginesTime() {
    hand().pick("manifestPointsChoice");
    hand().chooseRow("manifestTable", "engine run in water, out of gear");
    hand().fill("manifestPointLowEdit", "0");
    hand().press("manifestPointWriteButton");
    expectSaid("manifestSaidLabel", "ngine run in water");
}

void FirstHour::fitOut(const QString& boat, const char* const (&owners)[2]) {
    hand().choose("fitOutHomeBox", boat);
    ASSERT_TRUE(waitFor([&] {
        const auto* button = qobject_cast<QPushButton*>(hand().find("fitOutRegisterButton"));
        return button && button->text() == "Register 12 items";
    }));
    hand().chooseLine("fitOutList", "all");
    hand().fill("fitOutMadeEdit", "2025-11");
    hand().fill("fitOutFirstUseEdit", "2026-03");
    hand().chooseLine("fitOutList", hand().lineOf("fitOutList", "life jacket"));
    hand().choose("fitOutSizeBox", "L");
    const QString whistles = hand().lineOf("fitOutList", "whistle");
    for (int i = 0; i < 2; ++i) {
        hand().chooseLine("fitOutList", whistles + ' ' + QString::number(i));
        hand().choose("fitOutPersonBox", owners[i]);
    }
    hand().press("fitOutRegisterButton");
    expectSaid("fitOutSaidLabel", "12 items registered");
}

void FirstHour::saveTheTags() {
    toSetUp();
    hand().press("fitOutBackButton");
    hand().press("setUpButton 4");
    hand().press("tagsWriteButton");
    expectSaid("tagsSaidLabel", "Saved:");
    ASSERT_TRUE(QFile::exists(pathOf("tags.pdf")));
}

void FirstHour::launch() {
    toSetUp();
    hand().press("setUpButton 5");
    const auto unopened = [&] { return session() && session()->state(); };
    hand().press("boatStrip Dabchick");
    ASSERT_TRUE(waitFor(unopened));
    hand().choose("driverBox", "Marta Quill");
    settle();
    hand().choose("crewBox1", "Sami Reeve");
    settle();
    EXPECT_EQ(session()->state()->names.size(), 2u);
    scanTheKitOf("Dabchick");
    doThePoints();
    sign();
}

void FirstHour::scanTheKitOf(const std::string& boat) {
    for (const core::Item& item : stored().kit().all())
        if (item.boat == boat || item.person == "Marta Quill" || item.person == "Sami Reeve") {
            hand().scan(QString::fromStdString(item.tag));
            settle();
        }
}

void FirstHour::doThePoints() {
    const auto points = session()->state()->answer.points;
    const auto isDone = [&](const std::string& name) {
        for (const core::PointAnswer& each : session()->state()->answer.points)
            if (each.point.name == name) return each.state == core::PointState::Done;
        return false;
    };
    for (const core::PointAnswer& each : points) {
        const QString key = "point " + QString::fromStdString(each.point.name);
        hand().pressLine("checkList", key);
        if (each.point.kind == core::PointKind::Measure) {
            hand().type("19");
            hand().key(Qt::Key_Return);
        } else if (each.point.kind == core::PointKind::Timed) {
            settle();
            hand().pressLine("checkList", key);
        }
        EXPECT_TRUE(waitFor([&] { return isDone(each.point.name); })) << each.point.name;
        settle();
    }
}

void FirstHour::sign() {
    expectSaid("outcomeLabel", "Kit complete");
    if (HasFailure()) return;
    hand().press("signButton");
    hand().press("signNowButton");
    expectSaid("signedLabel", "Marta Quill");
    hand().press("signedDoneButton");
    ASSERT_NE(hand().find("boatStrip Dabchick"), nullptr);
}

} // namespace

TEST_P(FirstHour, fromTheEmptyScreenToASignedLaunchCheck) {
    noteTexts();
    inTurn({[&] { startTheClub(); }, [&] { writeThePeople(); }, [&] { writeTheBoats(); },
            [&] { writeKitType("first aid kit"); }, [&] { writeKitType("bailer"); },
            [&] { writeTheServiceRule(); }, [&] { askForTheKit("first aid kit"); },
            [&] { askForTheKit("bailer"); }, [&] { takeTheEnginesTime(); }, [&] { toFitOut(); },
            [&] {
                fitOut("Bittern", {"Tobin Ashe", "Petra Lund"});
            },
            [&] {
                fitOut("Dabchick", {"Marta Quill", "Sami Reeve"});
            },
            [&] { saveTheTags(); },
            [&] {
                hand().showPage("Bench", "Alt+4");
                hand().find("benchRuleBox");
            },
            [&] { launch(); }});
    ASSERT_FALSE(HasFailure());
    const QStringList names = namesOfGuide();
    EXPECT_GT(names.size(), 40);
    for (QString name : names) {
        name.replace("Record 1 as", "Record 0 as");   // nothing was shown at the bench
        const bool isOfSlip = name == "Remove rule…"; // which this walk does not make
        EXPECT_TRUE(wasShown(name) || name == "Read" || isOfSlip) << name.toStdString(); // a new log is empty
    }
    EXPECT_FALSE(wasShown("Begin this club file"));
    const core::Club club = stored();
    EXPECT_EQ(club.kit().all().size(), 24u);
    EXPECT_EQ(club.register_().kitTypes().size(), 9u);
    const auto boats = club.answers().boatConditions(*core::CalendarDay::from(2026, 3, 14));
    ASSERT_EQ(boats.size(), 2u);
    for (const core::BoatCondition& each : boats)
        EXPECT_EQ(each.kind == core::BoatCondition::Kind::Out, each.boat == "Dabchick") << each.boat;
    EXPECT_TRUE(club.record().verify(false)->problems.empty());
    // The service rule counts from the first use that was written in the fit-out: twelve months after
    // March.
    std::vector<std::string> days;
    for (const core::DueRow& row : club.answers().dueList(*core::CalendarDay::from(2026, 3, 14), 1000))
        if (row.due.rule.name == "yearly service") days.push_back(row.due.due->iso());
    EXPECT_EQ(days, (std::vector<std::string>{"2027-03-01", "2027-03-01"}));
}

TEST_P(FirstHour, everyTagOfThePdfIsReadByAForeignReader) {
    inTurn(
        {[&] { startTheClub(); }, [&] { writeThePeople(); }, [&] { writeTheBoats(); }, [&] { toFitOut(); }});
    ASSERT_FALSE(HasFailure());
    hand().press("fitOutRegisterButton");
    expectSaid("fitOutSaidLabel", "10 items registered");
    saveTheTags();
    std::set<std::string> wanted;
    const core::Club club = stored();
    const auto labels = club.kit().allTagLabels(*core::CalendarDay::from(2026, 3, 14));
    for (const core::TagLabel& label : *labels)
        wanted.insert(label.code);
    EXPECT_EQ(wanted.size(), 10u + 2u + std::size(members));
    EXPECT_EQ(support::tagsReadByOthers(pathOf("tags.pdf"), m_folder.path()), wanted);
}

INSTANTIATE_TEST_SUITE_P(By, FirstHour, testing::Values(StoryHand::Way::Mouse, StoryHand::Way::Keys),
                         [](const auto& way) {
                             return way.param == StoryHand::Way::Mouse ? "Mouse" : "Keys";
                         });
