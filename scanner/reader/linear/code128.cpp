#include "scanner/reader/linear/code128.h"

namespace scanner::reader {

const std::array<const char*, 106> code128Widths{
    "212222", "222122", "222221", "121223", "121322", "131222", "122213", "122312", "132212", "221213",
    "221312", "231212", "112232", "122132", "122231", "113222", "123122", "123221", "223211", "221132",
    "221231", "213212", "223112", "312131", "311222", "321122", "321221", "312212", "322112", "322211",
    "212123", "212321", "232121", "111323", "131123", "131321", "112313", "132113", "132311", "211313",
    "231113", "231311", "112133", "112331", "132131", "113123", "113321", "133121", "313121", "211331",
    "231131", "213113", "213311", "213131", "311123", "311321", "331121", "312113", "312311", "332111",
    "314111", "221411", "431111", "111224", "111422", "121124", "121421", "141122", "141221", "112214",
    "112412", "122114", "122411", "142112", "142211", "241211", "221114", "413111", "241112", "134111",
    "111242", "121142", "121241", "114212", "124112", "124211", "411212", "421112", "421211", "212141",
    "214121", "412121", "111143", "111341", "131141", "114113", "114311", "411113", "411311", "113141",
    "114131", "311141", "411131", "211412", "211214", "211232"};
const char* const code128Stop = "2331112";

namespace {

constexpr int shift = 98, toC = 99, toB = 100, toA = 101, fnc1 = 102, startA = 103, startC = 105;

/// One character of set A or B; false for function characters.
bool appendAB(int value, char set, std::string& text) {
    if (value > 95) return false;
    const int code = set == 'A' && value > 63 ? value - 64 : value + 32;
    text += static_cast<char>(code);
    return true;
}

} // namespace

std::optional<Code128Text> code128TextOf(std::span<const int> characters) {
    if (characters.empty() || characters[0] < startA || characters[0] > startC) return std::nullopt;
    char set = static_cast<char>('A' + characters[0] - startA);
    bool shifted = false;
    Code128Text result;
    for (std::size_t i = 1; i < characters.size(); ++i) {
        const int value = characters[i];
        if (value == fnc1) {
            if (i == 1)
                result.gs1 = true;
            else
                result.text += '\x1d';
        } else if (set == 'C' && value < 100) {
            result.text += static_cast<char>('0' + value / 10);
            result.text += static_cast<char>('0' + value % 10);
        } else if (value == toC && set != 'C') {
            set = 'C';
        } else if (value == toB && set != 'B') {
            set = 'B';
        } else if (value == toA && set != 'A') {
            set = 'A';
        } else if (value == shift && set != 'C' && !shifted) {
            shifted = true;
            continue;
        } else {
            const char now = shifted ? (set == 'A' ? 'B' : 'A') : set;
            if (set == 'C' || !appendAB(value, now, result.text)) return std::nullopt;
        }
        if (shifted) shifted = false;
    }
    if (result.text.empty()) return std::nullopt;
    return result;
}

bool code128CheckAgrees(std::span<const int> all) {
    if (all.size() < 3) return false;
    long sum = all[0];
    for (std::size_t i = 1; i + 1 < all.size(); ++i)
        sum += static_cast<long>(i) * all[i];
    return sum % 103 == all.back();
}

} // namespace scanner::reader
