#include "app/gui/gear/kit/kit_page.h"

#include "app/gui/club/club_thread.h"
#include "app/gui/gear/kit/kit_list.h"
#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "app/gui/theme/sounds.h"
#include "app/gui/widgets/plain_table.h"
#include "core/club/club.h"
#include "core/club/club_answers.h"
#include "core/club/club_register.h"
#include "core/tag/tag_code.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/wait_for.h"

#include <benchmark/benchmark.h>

#include <QApplication>
#include <QComboBox>
#include <QLineEdit>
#include <QScrollBar>

#include <fstream>
#include <memory>
#include <stdexcept>

// The page Kit with 10,000 items: how long it takes until all of them stand there, until a letter has
// narrowed them down or another order is chosen, and to paint a screenful while it scrolls. Run by hand, in
// release.

namespace {

constexpr int items = 10000, boats = 40, types = 20;

core::Moment now() {
    return {*core::Instant::parse("2026-03-14T06:40:00Z"), *core::CalendarDay::from(2026, 3, 14)};
}

void writeRegister(const std::filesystem::path& folder) {
    std::filesystem::create_directories(folder);
    std::ofstream kitTypes(folder / "kit_types.csv"), rules(folder / "life_rules.csv"),
        kit(folder / "items.csv"), boatFile(folder / "boats.csv");
    kitTypes << "kit_type\n";
    rules << "kit_type,rule,kind,n\n";
    for (int type = 0; type < types; ++type) {
        kitTypes << "type " << type << '\n';
        rules << "type " << type << ",yearly look,inspect_every,12\ntype " << type
              << ",retire,from_made,120\n";
    }
    boatFile << "boat,boat_class\n";
    for (int boat = 0; boat < boats; ++boat)
        boatFile << "boat " << boat << ",inflatable\n";
    kit << "code,kit_type,boat,made,serial\n";
    std::uint64_t next = 1;
    for (int item = 0; item < items; ++item) {
        const auto code =
            core::TagCode::mint(core::TagClass::Kit, [&] { return next = next * 6364136223846793005U + 1; });
        kit << code.text() << ",type " << item % types << ",boat " << item % boats << ",20" << 16 + item % 10
            << "-05,S-" << item << '\n';
    }
}

/// The page over that club, shown.
class Page {
public:
    Page() {
        writeRegister(m_folder / "csv");
        auto club = core::Club::create(file(), "Ten Thousand");
        if (!club || !club->register_().importCsv(m_folder / "csv", now().today, false))
            throw std::runtime_error("the club cannot be made");
    }
    void open() {
        bool isOpen = false;
        m_club.open(file(), [&](const core::Outcome&) { isOpen = true; });
        support::waitFor([&] { return isOpen; });
    }
    app::GearTools tools() {
        return {m_club, now, m_sounds, {}, [] { return false; }};
    }
    std::filesystem::path file() const { return m_folder / "club.tholepin"; }

private:
    support::ScratchFolder m_folder;
    app::ClubThread m_club;
    app::Sounds m_sounds;
};

/// Ends with the application, whose threads it uses.
std::unique_ptr<Page> page;

std::unique_ptr<app::KitPage> shownPage() {
    auto shown = std::make_unique<app::KitPage>(page->tools());
    shown->resize(1600, 900);
    shown->show();
    support::waitFor(
        [&] { return shown->findChild<app::PlainTable*>("kitTable")->model()->rowCount() == items; });
    shown->grab();
    return shown;
}

void openPage(benchmark::State& state) {
    for (auto round : state)
        shownPage();
}
BENCHMARK(openPage)->Unit(benchmark::kMillisecond);

/// What of that is the club's thread's: reading the items and what is due of them.
void readIt(benchmark::State& state) {
    const auto club = core::Club::open(page->file(), core::Club::Access::ReadOnly);
    for (auto round : state)
        benchmark::DoNotOptimize(club->answers().kitWithNextDue(now().today));
}
BENCHMARK(readIt)->Unit(benchmark::kMillisecond);

/// And making its rows and words.
void makeRows(benchmark::State& state) {
    const auto club = core::Club::open(page->file(), core::Club::Access::ReadOnly);
    const auto kit = club->answers().kitWithNextDue(now().today);
    for (auto round : state)
        benchmark::DoNotOptimize(app::KitList(kit));
}
BENCHMARK(makeRows)->Unit(benchmark::kMillisecond);

void typeALetter(benchmark::State& state) {
    const auto shown = shownPage();
    auto* typed = shown->findChild<QLineEdit*>("kitSearchEdit");
    const QString words[] = {"b", "bo", "boat 7", "type 3 boat", ""};
    std::size_t at = 0;
    for (auto round : state) {
        typed->setText(words[at++ % std::size(words)]);
        shown->grab();
    }
}
BENCHMARK(typeALetter)->Unit(benchmark::kMillisecond);

void orderByColumn(benchmark::State& state) {
    const auto shown = shownPage();
    auto* order = shown->findChild<QComboBox*>("kitOrderBox");
    int at = 0;
    for (auto round : state) {
        order->setCurrentIndex(++at % order->count());
        shown->grab();
    }
}
BENCHMARK(orderByColumn)->Unit(benchmark::kMillisecond);

void scrollAPage(benchmark::State& state) {
    const auto shown = shownPage();
    auto* table = shown->findChild<app::PlainTable*>("kitTable");
    QScrollBar& bar = *table->verticalScrollBar();
    for (auto round : state) {
        bar.setValue(bar.value() + bar.pageStep() > bar.maximum() ? 0 : bar.value() + bar.pageStep());
        table->viewport()->grab();
    }
}
BENCHMARK(scrollAPage)->Unit(benchmark::kMillisecond);

} // namespace

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    app::dress(application, app::paletteOf("light"));
    page = std::make_unique<Page>();
    page->open();
    benchmark::Initialize(&argc, argv);
    benchmark::RunSpecifiedBenchmarks();
    page.reset();
    return 0;
}
