#include "tests/app/gui/gear/gear_story.h"
#include "tests/app/gui/hostile_club.h"

#include <set>

namespace {

class ForeignTextOnGearPages : public support::GearStory, public testing::WithParamInterface<const char*> {
protected:
    void SetUp() override { support::writeHostileClub(file()); }
};

TEST_P(ForeignTextOnGearPages, standsAsItIs) {
    openOffice(GetParam());
    support::expectShownAsItIs(office(), GetParam());
    // A place to begin from: each page that lists something names what it lists.
    EXPECT_GE(support::hostileNamesIn(office()), 1) << GetParam();
    for (auto* view : office().findChildren<QAbstractItemView*>()) {
        if (!view->isVisible() || !view->model() || view->model()->rowCount() == 0) continue;
        for (int row = 0; row < std::min(6, view->model()->rowCount()); ++row) {
            view->setCurrentIndex(view->model()->index(row, 0));
            settle();
            support::expectShownAsItIs(office(), GetParam());
        }
    }
    office().grab();
}

INSTANTIATE_TEST_SUITE_P(Pages, ForeignTextOnGearPages,
                         testing::Values("missing", "events", "kit", "bench", "stocktake", "log", "ready",
                                         "due", "replace", "tags", "manifests", "register", "record"),
                         [](const auto& page) { return std::string(page.param); });

} // namespace
