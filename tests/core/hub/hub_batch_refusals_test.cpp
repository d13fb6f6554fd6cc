#include "tests/core/hub/hub_refusals.h"

#include <gtest/gtest.h>

// Batches that the server does not take, by its own check.

namespace {

using core::ErrorCode;
using core::Fact;

class HubRefusesBatches : public support::HubRefuses {};

TEST_F(HubRefusesBatches, whatFollowsIsTakenAndTwiceIsNothingNew) {
    const Fact next = following(factsIn(shed).back());
    const std::string before = count();
    EXPECT_EQ(pushed({next}), std::nullopt);
    EXPECT_NE(count(), before);
    const std::string after = count();
    EXPECT_EQ(pushed({next}), std::nullopt);
    EXPECT_EQ(count(), after);
}

TEST_F(HubRefusesBatches, aForgedFactByTheServer) {
    const Fact good = following(factsIn(shed).back());
    const std::string before = count();
    const auto with = [&](auto change) {
        Fact fact = good;
        change(fact);
        return pushed({fact});
    };
    // Each part of a fact is in its hash.
    EXPECT_EQ(with([](Fact& f) { f.body = R"({"name":"Sandbax"})"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.by = "Somebody"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.kind = "tag-seen"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.atUtc = "2026-01-01T00:00:00.000Z"; }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.id = core::newUuid7(core::Instant::now()); }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.hash.back() = f.hash.back() == '0' ? '1' : '0'; }),
              ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { f.signature.clear(); }), ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { // hashed well, but not what follows
                  f.prevHash = std::string(64, '0');
                  f.hash = core::hashOf(f);
              }),
              ErrorCode::HubFactRefused);
    EXPECT_EQ(with([](Fact& f) { // a number left out
                  ++f.seq;
                  f.hash = core::hashOf(f);
              }),
              ErrorCode::HubFactRefused);
    EXPECT_EQ(count(), before);
}

TEST_F(HubRefusesBatches, aBatchIsTakenWholeOrNotAtAll) {
    const Fact good = following(factsIn(shed).back());
    Fact bad = following(good);
    bad.by = "Somebody";
    const std::string before = count();
    EXPECT_EQ(pushed({good, bad}), ErrorCode::HubFactRefused);
    EXPECT_EQ(count(), before);
    EXPECT_EQ(pushed({good, following(good)}), std::nullopt);
}

TEST_F(HubRefusesBatches, whatIsSentWithoutKnowingTheOthers) {
    const Fact good = following(factsIn(shed).back());
    EXPECT_EQ(pushed({good}, 1), ErrorCode::HubAhead);
    EXPECT_EQ(pushed({good}), std::nullopt);
}

TEST_F(HubRefusesBatches, namesAndBodiesOfAllSorts) {
    Fact fact = following(factsIn(shed).back());
    fact.by = "O'Brien \"Bo\" \\ {,} \t\x01\x7f ü 船";
    fact.body = R"({"name":"x'); DROP TABLE tholepin.fact; --"})";
    fact.hash = core::hashOf(fact);
    ASSERT_EQ(pushed({fact}), std::nullopt) << "PostgreSQL's to_json and ours write the same";
    core::HubConnection hub(core::hubUrlFrom(url()).value());
    const auto club = core::hubFacts::clubs(hub).front().club;
    const auto back = core::hubFacts::inChain(hub, club, fact.machine, fact.seq);
    ASSERT_TRUE(back);
    EXPECT_EQ(back->by, fact.by);
    EXPECT_EQ(back->body, fact.body);
    EXPECT_EQ(back->hash, fact.hash);
}

// What is there already is known by its hash; what is said beside that hash is not believed.
TEST_F(HubRefusesBatches, toEraseWithoutAFact) {
    ASSERT_TRUE(shed.join(url(), true));
    Fact known = factsIn(shed).back();
    known.kind = "private-erased";
    std::string cells = ask("SELECT fact FROM tholepin.private_cell");
    cells.pop_back();
    known.body = R"({"facts":[")" + cells + R"("]})";
    const std::string before = count();
    EXPECT_EQ(pushed({known}), std::nullopt) << "nothing new";
    EXPECT_EQ(count(), before);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.erased"), "0\n");
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "1\n");
    Fact erasing = following(factsIn(shed).back());
    erasing.kind = known.kind;
    erasing.body = known.body;
    erasing.hash = core::hashOf(erasing);
    EXPECT_EQ(pushed({erasing}), std::nullopt);
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.private_cell"), "0\n");
}

TEST_F(HubRefusesBatches, aForkByTheServer) {
    Fact other = factsIn(shed).back();
    other.by = "Somebody";
    other.hash = core::hashOf(other);
    const std::string before = count();
    EXPECT_EQ(pushed({other}), ErrorCode::HubForked);
    EXPECT_EQ(count(), before);
}

// A machine that goes on from a fact which this club does not have is of another one.
TEST_F(HubRefusesBatches, aForeignMachine) {
    EXPECT_EQ(pushed({begun(std::string(64, 'a'))}), ErrorCode::HubFactRefused);
    EXPECT_EQ(pushed({begun("")}), ErrorCode::HubFactRefused) << "a club has one beginning";
    Fact wrong = begun(factsIn(shed).back().hash);
    wrong.machine = std::string(32, 'b');
    wrong.hash = core::hashOf(wrong);
    EXPECT_EQ(pushed({wrong}), ErrorCode::HubFactRefused) << "the id is made of the key";
    EXPECT_EQ(pushed({begun(factsIn(shed).back().hash)}), std::nullopt);
}

// Of one chain what is there already and what follows, of another one its beginning, which goes on from the
// first's.
TEST_F(HubRefusesBatches, oneChainsFactsAndWithThemAnothers) {
    const auto known = factsIn(shed);
    const Fact next = following(known.back()), van = begun(next.hash), more = following(van);
    Fact changed = following(more);
    changed.by = "Somebody";
    EXPECT_EQ(pushed({known.back(), van, next, more, changed}), ErrorCode::HubFactRefused);
    EXPECT_EQ(m_refused, (std::vector<std::string>{"3", van.machine}));
    EXPECT_EQ(pushed({known.back(), van, next, more}), std::nullopt);
    EXPECT_EQ(count(), std::to_string(known.size() + 3) + '\n');
    EXPECT_EQ(
        ask("SELECT string_agg(number::text, ' ' ORDER BY number) FROM tholepin.fact WHERE machine = '" +
            van.machine + "'"),
        "1 2\n");
    EXPECT_EQ(ask("SELECT count(*) FROM tholepin.machine"), "2\n");
}

// The number that is told is the first that is wrong.
TEST_F(HubRefusesBatches, aForkBeforeWhatWouldFollow) {
    auto other = factsIn(shed);
    const std::size_t known = other.size(), at = known - 2;
    for (std::size_t i = at; i < known; ++i) {
        other[i].by = "Somebody";
        other[i].prevHash = other[i - 1].hash;
        other[i].hash = core::hashOf(other[i]);
    }
    other.push_back(following(other.back()));
    EXPECT_EQ(pushed(other), ErrorCode::HubForked);
    EXPECT_EQ(m_refused, (std::vector<std::string>{other[at].machine, std::to_string(other[at].seq)}));
    EXPECT_EQ(count(), std::to_string(known) + '\n');
}

} // namespace
