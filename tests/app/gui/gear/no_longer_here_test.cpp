#include "app/gui/gear/bench/bench_page.h"
#include "app/gui/gear/bench/stocktake_page.h"
#include "app/gui/gear/kit/new_kit_panel.h"
#include "app/gui/gear/log/log_page.h"
#include "app/gui/gear/ready/ready_page.h"
#include "app/gui/gear/record/evidence_panel.h"
#include "app/gui/gear/record/history_panel.h"
#include "app/gui/gear/replace/arrival_panel.h"
#include "core/club/club_register.h"
#include "tests/app/gui/gear/plan_pages.h"

#include <QComboBox>

#include <fstream>

namespace {

// docs/rules.md, "No longer here": gone from what is chosen from the day after the last, and never from the
// record.

class NoLongerHere : public support::PlanPages {
protected:
    void SetUp() override {
        support::PlanPages::SetUp();
        // Dabchick, Sami Reeve and the drying rack went yesterday; for Bittern, Hal Okoro and the bench today
        // is the last day.
        write("boats.csv", "boat,until\nDabchick,2026-03-13\nBittern,2026-03-14\n");
        write("people.csv", "person,until\nSami Reeve,2026-03-13\nHal Okoro,2026-03-14\n");
        write("places.csv", "place,until\nDrying rack,2026-03-13\nRepair bench,2026-03-14\n");
        const auto plan =
            stored(core::Club::Access::ReadWrite).register_().importCsv(folder() / "ends", today(), false);
        ASSERT_TRUE(plan && plan->rejected.empty());
    }
    void write(const char* name, const char* text) {
        std::filesystem::create_directories(folder() / "ends");
        std::ofstream(folder() / "ends" / name) << text;
    }

    /// What the box offers once the page is filled.
    template <class Page>
    QStringList offered(const char* box, void (*refresh)(Page&)) {
        Page page(tools());
        page.show();
        refresh(page);
        auto* choices = page.template findChild<QComboBox*>(box);
        EXPECT_TRUE(support::waitFor([&] { return choices->count() > 2; })) << box;
        QStringList texts;
        for (int i = 0; i < choices->count(); ++i)
            texts << choices->itemText(i);
        return texts;
    }
    template <class Page>
    void expectGone(const char* box, const char* gone, const char* stays, void (*refresh)(Page&)) {
        const QStringList texts = offered<Page>(box, refresh);
        EXPECT_FALSE(texts.contains(gone)) << box << ": " << texts.join(", ").toStdString();
        EXPECT_TRUE(texts.contains(stays)) << box << ": " << texts.join(", ").toStdString();
    }
};

template <class Page>
void byItself(Page&) {}
template <class Page>
void asked(Page& page) {
    page.refresh();
}

TEST_F(NoLongerHere, boatsAreOfferedForNothingNew) {
    expectGone<app::LogPage>("logAboutBox", "Dabchick", "Bittern", byItself);
    expectGone<app::NewKitPanel>("newHomeBox", "Dabchick", "Bittern", asked);
}

TEST_F(NoLongerHere, peopleAreOfferedForNothingNew) {
    expectGone<app::NewKitPanel>("newPersonBox", "Sami Reeve", "Hal Okoro", asked);
    expectGone<app::BenchPage>("benchByBox", "Sami Reeve", "Hal Okoro", byItself);
    expectGone<app::StocktakePage>("stocktakeByBox", "Sami Reeve", "Hal Okoro", byItself);
}

TEST_F(NoLongerHere, placesAreOfferedForNothingNew) {
    expectGone<app::NewKitPanel>("newHomeBox", "Drying rack", "Repair bench", asked);
    expectGone<app::StocktakePage>("stocktakePlaceBox", "Drying rack", "Repair bench", byItself);
    expectGone<app::ReadyPage>("readyPlaceBox", "Drying rack", "Repair bench", byItself);
}

TEST_F(NoLongerHere, theRecordKnowsThem) {
    EXPECT_TRUE(offered<app::HistoryPanel>("historyNameBox", asked).contains("Sami Reeve"));
    EXPECT_TRUE(offered<app::EvidencePanel>("evidenceBoatBox", asked).contains("Dabchick"));
}

} // namespace
