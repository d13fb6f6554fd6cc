#pragma once

#include "tests/support/watched_disk.h"

#include <filesystem>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace support {

/// What of the writes that were not synced is on the platter when the power goes.
enum class Loss {
    Nothing, ///< of them is there
    Everything,
    Prefix,      ///< the first ones
    Subset,      ///< any, in any order
    Torn,        ///< any sectors of 512 bytes of any
    TornGarbage, ///< the same, and one sector holds anything
};
inline constexpr Loss everyLoss[] = {Loss::Nothing, Loss::Everything, Loss::Prefix,
                                     Loss::Subset,  Loss::Torn,       Loss::TornGarbage};
/// And of the names that were made, changed or deleted in a folder that was not synced.
enum class Names { Kept, Undone, Some };
inline constexpr Names everyNames[] = {Names::Kept, Names::Undone, Names::Some};

/// The files of a folder by path, as a power cut leaves them.
using Image = std::map<std::string, std::string>;

/// A disk as POSIX promises it and no better: a file's content is lasting from its sync on, a name from the
/// sync of its folder. Replays events one by one, and tells what may be there at each moment.
class Platter {
public:
    /// All that stands in the folder now is lasting.
    explicit Platter(const std::filesystem::path& folder);

    void replay(const DiskEvent& event);
    /// Nothing is known to be lasting of what stands in that file.
    void unsync(const std::string& path);
    Image image(Loss loss, Names names, std::mt19937& random) const;

private:
    struct Write {
        int file;
        bool isTruncate;
        std::int64_t offset;
        std::string bytes;
    };
    struct Change {
        DiskEvent::Kind kind;
        std::string path, to;
        int file;
    };
    using Files = std::map<int, std::string>;
    using NameOf = std::map<std::string, int>;

    int make(const std::string& path);
    static void apply(const Write& write, std::string& content);
    static void apply(const Change& change, NameOf& names);
    void sync(int file);
    void syncFolder(const std::string& folder);
    std::vector<Write> surviving(Loss loss, std::mt19937& random) const;
    NameOf survivingNames(Names names, std::mt19937& random) const;

    Files m_lasting;
    NameOf m_lastingNames;
    NameOf m_names;
    std::vector<Write> m_writes;   ///< since the sync of their files
    std::vector<Change> m_changes; ///< since the sync of their folders
    int m_made = 0;
};

/// Makes the folder hold the image's files and no others; `from` is the folder that the image is of.
void layOut(const Image& image, const std::filesystem::path& from, const std::filesystem::path& folder);

} // namespace support
