#include "core/plan/replacement/loss_rate.h"

#include "core/plan/replacement/in_service.h"
#include "tests/core/plan/today.h"

#include <boost/math/distributions/gamma.hpp>
#include <gtest/gtest.h>

namespace core {
namespace {

Item item(ItemState state, const std::string& since = {}, const std::string& why = {}) {
    Item made;
    made.state = state;
    if (!since.empty()) made.since = day(since);
    made.why = why;
    made.registered = known("2024-01-01");
    return made;
}

LossRecord recordOf(const std::vector<Item>& items) {
    LossRecord record;
    for (const Item& each : items)
        record.add(each, today);
    return record;
}

TEST(LossRate, learnsFromTheRecordByAddingCountsAndTime) {
    // Published conjugate updates: Gamma(2,1) and 217 events in 111 (a first course in Bayesian methods,
    // 3.2.2); NIST/SEMATECH e-Handbook 8.4.6: Gamma(2.863, 1522.46), 2 failures in 1700 hours.
    const auto updated = [](LossPrior prior, int losses, double itemYears) {
        LossRecord record{losses, 0};
        record.days = static_cast<std::int64_t>(itemYears * daysOfYear);
        return lossRateOf(record, prior);
    };
    EXPECT_DOUBLE_EQ(updated({2, 1}, 217, 112).shape, 219);
    EXPECT_NEAR(updated({2, 1}, 217, 111).mean(), 1.955357, 1e-4); // a record counts whole days
    EXPECT_NEAR(updated({2, 1}, 66, 44).mean(), 1.511111, 1e-4);
    EXPECT_NEAR(updated({2.863, 1522.46}, 2, 1700).shape, 4.863, 1e-12);
    EXPECT_NEAR(updated({2.863, 1522.46}, 2, 1700).rate, 3222.46, 1e-9);
}

TEST(LossRate, isThatOfTheWorkedExample) {
    // Gamma(0.5, 10), 7 losses in 120.8333 item-years; scipy 1.10.
    const LossRate rate{7.5, 10 + 120 + 5.0 / 6};
    EXPECT_NEAR(rate.mean(), .0573248408, 1e-9);
    const boost::math::gamma_distribution<double> posterior(rate.shape, 1 / rate.rate);
    EXPECT_NEAR(boost::math::quantile(posterior, .5), .0547981892, 1e-9);
    EXPECT_NEAR(boost::math::quantile(posterior, .05), .0277488303, 1e-9);
    EXPECT_NEAR(boost::math::quantile(posterior, .95), .0955253126, 1e-9);
}

TEST(LossRate, countsWhatIsMissingOrWrittenOffAsLost) {
    EXPECT_EQ(recordOf({item(ItemState::Missing, "2025-01-01")}).losses, 1);
    EXPECT_EQ(recordOf({item(ItemState::Missing, "2025-01-01", "damaged")}).losses, 1);
    EXPECT_EQ(recordOf({item(ItemState::WrittenOff, "2025-01-01", "lost")}).losses, 1);
    for (const char* why : {"", "damaged", "worn", "expired"})
        EXPECT_EQ(recordOf({item(ItemState::WrittenOff, "2025-01-01", why)}).losses, 0) << why;
    EXPECT_EQ(recordOf({item(ItemState::Serviceable), item(ItemState::Unserviceable)}).losses, 0);
}

TEST(LossRate, countsNothingOfWhatWasRegisteredByMistake) {
    const Item mistake = item(ItemState::WrittenOff, "2025-01-01", "mistake");
    EXPECT_EQ(recordOf({mistake}).losses, 0);
    EXPECT_EQ(recordOf({mistake}).days, 0) << "it never was in service";
    EXPECT_EQ(recordOf({item(ItemState::WrittenOff, "2025-01-01", "worn")}).days, 366);
    EXPECT_EQ(recordOf({item(ItemState::Missing, "2025-01-01", "mistake")}).losses, 1) << "it is missing";
}

TEST(LossRate, countsTimeFromFirstUseElseRegistrationToTheEndOfService) {
    Item used = item(ItemState::Serviceable);
    EXPECT_EQ(daysInService(used, today), 731); // 2024 is a leap year
    used.firstUse = known("2025-12");
    EXPECT_EQ(daysInService(used, today), 31) << "a month is its first day";
    EXPECT_EQ(daysInService(item(ItemState::Unserviceable), today), 731) << "still in service";
    EXPECT_EQ(daysInService(item(ItemState::Missing, "2024-01-31"), today), 30);
    EXPECT_EQ(daysInService(item(ItemState::WrittenOff, "2024-03-01", "worn"), today), 60);
    EXPECT_EQ(daysInService(item(ItemState::Missing), today), 731)
        << "until today when nobody knows since when";
    EXPECT_EQ(daysInService(item(ItemState::Missing, "2026-05-01"), today), 731) << "no time still to come";
    Item unknown = item(ItemState::Missing, "2025-01-01");
    unknown.registered.reset();
    EXPECT_EQ(daysInService(unknown, today), 0);
    EXPECT_EQ(recordOf({unknown}).losses, 1) << "its loss counts all the same";
    Item toCome = item(ItemState::Serviceable);
    toCome.registered = known("2026-02-01");
    EXPECT_EQ(daysInService(toCome, today), 0);
}

TEST(LossRate, yearsHave365AndAQuarterDays) {
    Item used = item(ItemState::Serviceable);
    used.registered = PartialDay(today.plusDays(-1461));
    EXPECT_DOUBLE_EQ(recordOf({used, used}).itemYears(), 8);
}

} // namespace
} // namespace core
