// libFuzzer target: any bytes as the file of a picture, in every format that Qt knows here. What comes out
// has no more pixels than a picture may, and no more of them in memory than the reader is given; with
// -rss_limit_mb the memory of decoding is held, too. The corpus has one small file of each kind.

#include "scanner/files/picture_file.h"

#include <QCoreApplication>
#include <QtGlobal>

#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <string>
#include <unistd.h>

namespace {

/// In memory where the machine has such a place: the target writes it for each input.
std::filesystem::path scratch() {
    const std::filesystem::path memory = "/dev/shm";
    const auto folder = std::filesystem::exists(memory) ? memory : std::filesystem::temp_directory_path();
    return folder / ("tholepin-picture-fuzz-" + std::to_string(getpid()));
}

} // namespace

extern "C" int LLVMFuzzerInitialize(int* count, char*** arguments) {
    static QCoreApplication application(*count, *arguments); // finds the plugins that read pictures
    qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {});
    return 0;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* bytes, std::size_t size) {
    static const std::filesystem::path file = scratch();
    std::ofstream(file, std::ios::binary)
        .write(reinterpret_cast<const char*>(bytes), static_cast<long>(size));
    const scanner::LoadedPicture picture = scanner::loadPicture(file);
    std::filesystem::remove(file);
    if (picture.error) return 0;
    const double pixels = static_cast<double>(picture.width) * picture.height;
    if (pixels < 1 || pixels > scanner::mostPixelsInFile) std::abort();
    if (static_cast<double>(picture.grey.width) * picture.grey.height > scanner::mostPixels) std::abort();
    return 0;
}
