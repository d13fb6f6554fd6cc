#include "core/record/machine_key.h"
#include "core/record/private_cells.h"

#include <gmock/gmock.h>

namespace {

using core::Fact;
using core::MachineKey;

struct PublishedSignature {
    const char* seed;
    const char* publicKey;
    const char* message;
    const char* signature;
};

// RFC 8032, section 7.1, tests 1 and 2 (the second message is the byte 0x72).
const PublishedSignature published[] = {
    {"9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
     "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a", "",
     "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f"
     "0595"
     "bbe24655141438e7a100b"},
    {"4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
     "3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c", "r",
     "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2ea"
     "eb43"
     "02aeeb00d291612bb0c00"},
};

TEST(MachineKey, signsAsPublished) {
    for (const PublishedSignature& each : published) {
        const auto key = MachineKey::ofSeed(each.seed);
        ASSERT_TRUE(key);
        EXPECT_EQ(key->publicKey(), each.publicKey);
        Fact fact{.hash = each.message};
        EXPECT_EQ(key->signatureOf(fact), each.signature);
        fact.signature = each.signature;
        EXPECT_TRUE(core::isSignedBy(fact, each.publicKey));
        EXPECT_FALSE(core::isSignedBy(fact, MachineKey::fresh().publicKey()));
        fact.hash += "x";
        EXPECT_FALSE(core::isSignedBy(fact, each.publicKey));
    }
}

TEST(MachineKey, readsNothingElseAsAKeyOrASignature) {
    const std::string seed = published[0].seed;
    EXPECT_TRUE(MachineKey::ofSeed(seed));
    for (const std::string& other :
         {std::string(), seed.substr(1), seed + "0", "g" + seed.substr(1), "A" + seed.substr(1)})
        EXPECT_FALSE(MachineKey::ofSeed(other)) << other;
    Fact fact{.hash = "", .signature = published[0].signature};
    EXPECT_TRUE(core::isSignedBy(fact, published[0].publicKey));
    EXPECT_FALSE(core::isSignedBy(fact, "garbage"));
    fact.signature.pop_back();
    EXPECT_FALSE(core::isSignedBy(fact, published[0].publicKey));
    fact.signature.clear();
    EXPECT_FALSE(core::isSignedBy(fact, published[0].publicKey));
}

TEST(MachineKey, theIdIsMadeOfThePublicKey) {
    const auto key = MachineKey::ofSeed(published[0].seed);
    EXPECT_EQ(key->machine(), core::sha256Hex(key->publicKey()).substr(0, 32));
    EXPECT_TRUE(core::isMachineId(key->machine()));
    for (const char* other : {"", "../../etc/passwd", "0123456789abcdef", "0123456789abcdef0123456789abcdeF"})
        EXPECT_FALSE(core::isMachineId(other)) << other;
    EXPECT_NE(MachineKey::fresh().machine(), MachineKey::fresh().machine());
}

TEST(PrivateCells, onlyTheMeasuresOfPeopleAreSealed) {
    core::RowWritten row =
        core::rowWritten(core::SheetId::People, {{"person", "Bram Oke"}},
                         {{"mass_kg", "82"}, {"role", "crew"}, {"chest_cm", ""}, {"note", "left-handed"}});
    const auto cells = core::seal(row, "f");
    ASSERT_EQ(cells.size(), 2U);
    const std::string text = core::textOf(row);
    EXPECT_THAT(text, testing::HasSubstr("left-handed"));
    EXPECT_THAT(text, testing::Not(testing::HasSubstr("\"82\""))) << "a digest may end so";
    EXPECT_EQ(cells[0].column, "mass_kg");
    EXPECT_EQ(core::digestOf("f", cells[0]),
              core::sha256Hex(R"(["f","mass_kg",")" + cells[0].salt + R"(","82"])"));
    for (const auto& cell : cells)
        EXPECT_THAT(text, testing::HasSubstr(core::digestOf("f", cell)));
    core::PrivateCell moved = cells[0]; // a digit from the salt to the value
    moved.value = moved.salt.substr(31) + moved.value;
    moved.salt.pop_back();
    EXPECT_NE(core::digestOf("f", moved), core::digestOf("f", cells[0]));
    EXPECT_NE(core::digestOf("g", cells[0]), core::digestOf("f", cells[0])) << "of another fact";

    core::RowWritten again =
        core::rowWritten(core::SheetId::People, {{"person", "Bram Oke"}}, {{"mass_kg", "82"}});
    EXPECT_NE(core::digestOf("f", core::seal(again, "f").front()), core::digestOf("f", cells[0])) << "salted";
    core::RowWritten boat = core::rowWritten(core::SheetId::Boats, {{"boat", "Tern"}}, {{"note", "blue"}});
    EXPECT_TRUE(core::seal(boat, "f").empty());
}

} // namespace
