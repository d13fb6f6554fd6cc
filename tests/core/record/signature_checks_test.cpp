#include "core/record/machine_key.h"
#include "core/record/signature_checks.h"

#include <gmock/gmock.h>

namespace {

using testing::ElementsAre;
using testing::IsEmpty;

core::Fact signedFact(const core::MachineKey& key, int number) {
    core::Fact fact{.hash = core::sha256Hex(std::to_string(number))};
    fact.signature = key.signatureOf(fact);
    return fact;
}

TEST(SignatureChecks, tellTheWrongOnesInTheirOrderWhoeverLooksAtThem) {
    const auto key = core::MachineKey::fresh(), other = core::MachineKey::fresh();
    core::SignatureChecks checks;
    EXPECT_THAT(checks.wrongOnes(), IsEmpty());
    for (int i = 0; i < 1000; ++i)
        checks.add(signedFact(i == 0 || i == 63 || i == 64 || i == 500 || i == 999 ? other : key, i),
                   key.publicKey());
    EXPECT_EQ(checks.waiting(), 1000U);
    EXPECT_THAT(checks.wrongOnes(), ElementsAre(0, 63, 64, 500, 999));
    EXPECT_THAT(checks.wrongOnes(), IsEmpty()) << "each is told once";

    checks.add(signedFact(key, 1), key.publicKey());
    checks.add(signedFact(key, 2), other.publicKey());
    EXPECT_THAT(checks.wrongOnes(), ElementsAre(1)) << "few, and places from 0 again";
}

TEST(SignatureChecks, endWithoutBeingAsked) {
    const auto key = core::MachineKey::fresh();
    core::SignatureChecks checks;
    for (int i = 0; i < 200; ++i)
        checks.add(signedFact(key, i), key.publicKey());
}

} // namespace
