#include "core/tag/maker_label.h"

#include "core/tag/gs1_identifiers.h"
#include "tests/core/base/days.h"
#include "tests/support/errors.h"

#define ZX_USE_UTF8 1
#include <ZXing/ReadBarcode.h>
#include <fmt/format.h>
#include <gmock/gmock.h>
#include <map>
#include <memory>
#include <random>
#include <zint.h>

namespace core {
namespace {

// Labels that a general-purpose encoder makes (zint, with its own GS1 checks) are drawn, read by a
// general-purpose reader (ZXing) and given to our parser: the element strings are not of our making.

constexpr int thisYear = 2026;

class Encoder {
public:
    explicit Encoder(int symbology)
        : m_symbol(ZBarcode_Create(), &ZBarcode_Delete) {
        m_symbol->symbology = symbology;
        m_symbol->input_mode = GS1_MODE;
        m_symbol->whitespace_width = 10;
        m_symbol->whitespace_height = 10;
        m_symbol->scale = 2;
        m_symbol->show_hrt = 0;
    }

    /// `[01]…[17]…`. False when zint refuses it.
    bool encode(const std::string& text) {
        return ZBarcode_Encode_and_Buffer(m_symbol.get(),
                                          reinterpret_cast<const unsigned char*>(text.c_str()),
                                          static_cast<int>(text.size()), 0) < ZINT_WARN_NONCOMPLIANT;
    }

    std::string error() const { return m_symbol->errtxt; }

    ZXing::Result read() const {
        const ZXing::ImageView picture(m_symbol->bitmap, m_symbol->bitmap_width, m_symbol->bitmap_height,
                                       ZXing::ImageFormat::RGB);
        return ZXing::ReadBarcode(picture);
    }

private:
    std::unique_ptr<zint_symbol, decltype(&ZBarcode_Delete)> m_symbol;
};

class RandomElements {
public:
    explicit RandomElements(unsigned seed)
        : m_random(seed) {}

    int upTo(int most) { return std::uniform_int_distribution(0, most)(m_random); }

    std::string valueFor(const Gs1Identifier& identifier) {
        std::string value;
        for (const Gs1Component& component : identifier.components)
            value += pieceFor(component);
        return value;
    }

    std::string date(bool dayNought) {
        const CalendarDay day = CalendarDay::fromNumber(day0 + upTo(20000)); // 2000 to 2054
        return fmt::format("{:02}{:02}{:02}", day.year() % 100, day.month(), dayNought ? 0 : day.day());
    }

private:
    static constexpr int day0 = 730120; // 2000-01-01

    std::string pieceFor(const Gs1Component& component) {
        // Character set 82 without the percent sign: ZXing 1.4 drops what follows one in a GS1 QR symbol.
        constexpr std::string_view characters =
            "!\"&'()*+,-./0123456789:;<=>?ABCDEFGHIJKLMNOPQRSTUVWXYZ_abcdefghijklmnopqrstuvwxyz";
        if (component.lint == Gs1Lint::Date) return date(upTo(4) == 0);
        if (component.lint == Gs1Lint::Zero) return "0";
        const int length =
            component.least + upTo(std::min(component.most, component.least + 12) - component.least);
        std::string piece;
        for (int i = 0; i < length; ++i)
            piece += component.set == 'N' ? static_cast<char>('0' + upTo(9))
                                          : characters[static_cast<std::size_t>(upTo(80))];
        while (component.lint == Gs1Lint::CheckDigit && !hasGs1CheckDigit(piece))
            piece.back() = piece.back() == '9' ? '0' : static_cast<char>(piece.back() + 1);
        return piece;
    }

    std::mt19937 m_random;
};

using Elements = std::map<std::string, std::string>;

std::string forZint(const Elements& elements) {
    std::string text;
    for (const auto& [ai, value] : elements)
        text += fmt::format("[{}]{}", ai, value);
    return text;
}

std::string dayText(const std::optional<PartialDay>& day) {
    if (!day) return {};
    const CalendarDay first = day->firstDay();
    return fmt::format("{:02}{:02}{:02}", first.year() % 100, first.month(),
                       day->isExact() ? first.day() : 0);
}

void expectSaid(const Elements& elements, const MakerLabel& label) {
    const auto said = [&](const char* ai) { return elements.contains(ai) ? elements.at(ai) : std::string(); };
    EXPECT_EQ(label.gtin, said("01"));
    EXPECT_EQ(label.serial, said("21"));
    EXPECT_EQ(label.batch, said("10"));
    EXPECT_EQ(dayText(label.made), said("11"));
    EXPECT_EQ(dayText(label.stamped), elements.contains("17") ? said("17") : said("15"));
}

/// Encodes, reads and parses; expects what was put in. False when the picture could not be read.
bool roundTrip(Encoder& encoder, const Elements& elements, const std::string& identifier) {
    const std::string text = forZint(elements);
    EXPECT_TRUE(encoder.encode(text)) << text << ": " << encoder.error();
    const auto read = encoder.read();
    if (!read.isValid()) return false;
    EXPECT_EQ(read.symbologyIdentifier(), identifier);
    const std::string bytes(read.bytes().asString());
    for (const std::string& transmitted : {bytes, identifier + bytes}) {
        const auto label = parseMakerLabel(transmitted, thisYear);
        EXPECT_TRUE(label) << text << ": " << (label ? "" : support::described(label.error()));
        if (label) expectSaid(elements, *label);
    }
    EXPECT_TRUE(looksLikeMakerLabel(identifier + bytes));
    return true;
}

struct Symbol {
    int zint;
    const char* identifier;
};

TEST(MakerLabelRoundTrip, throughSymbolsThatZintDrawsAndZxingReads) {
    RandomElements random(11);
    for (const Symbol symbol :
         {Symbol{BARCODE_DATAMATRIX, "]d2"}, Symbol{BARCODE_QRCODE, "]Q3"}, Symbol{BARCODE_GS1_128, "]C1"}}) {
        int unread = 0;
        for (int round = 0; round < 100; ++round) {
            Elements elements;
            const auto add = [&](std::string_view ai) {
                std::size_t length = 0;
                elements[std::string(ai)] = random.valueFor(*gs1IdentifierAt(ai, length));
            };
            if (random.upTo(3) > 0) add("01");
            if (random.upTo(1) > 0) add("21");
            // GS1-128 holds 48 characters.
            if (symbol.zint != BARCODE_GS1_128 && random.upTo(1) > 0) add("10");
            if (symbol.zint != BARCODE_GS1_128 && random.upTo(1) > 0) add("240");
            if (random.upTo(1) > 0) add("11");
            if (random.upTo(3) == 0) add("15");
            if (random.upTo(1) > 0 || elements.empty()) add("17");
            Encoder encoder(symbol.zint);
            unread += roundTrip(encoder, elements, symbol.identifier) ? 0 : 1;
            if (HasFailure()) return;
        }
        EXPECT_LE(unread, 5) << symbol.identifier << ": pictures that ZXing could not read";
    }
}

TEST(MakerLabelRoundTrip, withEveryIdentifierOfTheTable) {
    RandomElements random(12);
    for (const Gs1Identifier& identifier : gs1Identifiers())
        for (std::string_view ai : {identifier.first, identifier.last}) {
            Elements elements{{"17", "270300"}};
            elements[std::string(ai)] = random.valueFor(identifier);
            // zint also knows the countries, and that a piece's number is not above the total: not our
            // concern.
            if (ai == "422") elements["422"] = "276";
            if (ai == "8006") elements["8006"].replace(14, 4, "0103");
            Encoder encoder(BARCODE_DATAMATRIX);
            EXPECT_TRUE(roundTrip(encoder, elements, "]d2")) << ai;
        }
}

TEST(MakerLabelRoundTrip, refusesWhatZintRefuses) {
    // Both see the same elements; each bad one has a good twin that both take.
    const std::vector<std::pair<Elements, Elements>> goodAndBad{
        {{{"01", "12345678901231"}}, {{"01", "12345678901234"}}}, // check digit
        {{{"01", "12345678901231"}}, {{"01", "1234567890123"}}},  // length
        {{{"17", "260430"}}, {{"17", "260431"}}},                 // no such day
        {{{"17", "260400"}}, {{"17", "261300"}}},                 // no such month
        {{{"11", "240229"}}, {{"11", "230229"}}},                 // no leap year
        {{{"10", "ABC-1"}}, {{"10", "ABC#1"}}},                   // character
        {{{"10", "12345678901234567890"}}, {{"10", "123456789012345678901"}}},
        {{{"37", "12"}}, {{"37", "12A"}}},
        {{{"8004", "4000A"}}, {{"8004", "A0001"}}},
        {{{"8003", "02112345678900A"}}, {{"8003", "12112345678900A"}}},
    };
    const auto ours = [](const Elements& elements) {
        std::string text;
        for (const auto& [ai, value] : elements)
            text += fmt::format("({}){}", ai, value);
        return static_cast<bool>(parseMakerLabel(text, thisYear));
    };
    for (const auto& [good, bad] : goodAndBad) {
        Encoder encoder(BARCODE_DATAMATRIX);
        EXPECT_TRUE(encoder.encode(forZint(good))) << forZint(good) << encoder.error();
        EXPECT_TRUE(ours(good)) << forZint(good);
        Encoder other(BARCODE_DATAMATRIX);
        EXPECT_FALSE(other.encode(forZint(bad))) << forZint(bad);
        EXPECT_FALSE(ours(bad)) << forZint(bad);
    }
}

} // namespace
} // namespace core
