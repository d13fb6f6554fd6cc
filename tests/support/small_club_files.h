#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

namespace small_club {

/// Two boats of one class, Teal whole and in date on 14 March 2026, Coot with a knife only.
inline const std::string knife = "KD0XPAMAJG", paddle1 = "KVP5CYVRE7", paddle2 = "KERWRHZ7DY",
                         towLine = "KDVK4H6SRX", jacketM = "KGYD21XNA5", jacketL = "K2P9VZ9SMA",
                         radio = "KCYV1T03ZE", cootKnife = "KMRMQRZM66", writtenOff = "KTY3P2SKK1",
                         unknownTag = "KF9DPHVFJK";
inline const std::string tealTag = "BVWMV0JQQG", cootTag = "BXSW78G7S1", adaTag = "P5269VZ10C",
                         boTag = "PAQVR7K7RF", shedTag = "S00000002H";
inline const std::string finishTag = "C00000001Y", nextBoatTag = "C00000002W", undoTag = "C00000004S",
                         damagedTag = "C00000005Q", clockTag = "C00000008K", putAsideTag = "C00000010W";
inline const std::string today = "2026-03-14";

/// What makes Teal complete, with the two who go out in it.
std::vector<std::string> wholeKit();
std::string lines(const std::vector<std::string>& codes); ///< one a line
std::vector<std::string> without(std::vector<std::string> codes, const std::string& code);

/// The club's CSV files by name; a test may change them before it writes them.
std::map<std::string, std::string> csvFiles();
void writeFiles(const std::filesystem::path& folder, const std::map<std::string, std::string>& files);

} // namespace small_club
