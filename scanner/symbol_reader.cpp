#include "scanner/symbol_reader.h"

#include "scanner/reader/general_decoder.h"

namespace scanner {

std::vector<SeenCode> readSymbols(GreyView picture, const ReadOptions& options) {
    const auto effort = options.rescue ? reader::Effort::Thorough : reader::Effort::Quick;
    return reader::decodeMatrixSymbols(picture, effort);
}

} // namespace scanner
