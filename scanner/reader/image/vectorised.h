#pragma once

/// For hot loops over whole pictures: a second copy of the function for AVX2, chosen at the start of the
/// program, so that one binary is quick on a new machine and runs on an old one. Sanitizers cannot look into
/// such functions.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__) && !defined(__SANITIZE_ADDRESS__) &&     \
    !defined(__SANITIZE_THREAD__)
#define SCANNER_VECTORISED __attribute__((target_clones("avx2", "default")))
#else
#define SCANNER_VECTORISED
#endif

namespace scanner::reader {

/// Eight numbers that are reckoned with at once, for sums that the compiler does not put into one register by
/// itself. Not to be handed to functions.
using EightFloats __attribute__((vector_size(32))) = float;

} // namespace scanner::reader
