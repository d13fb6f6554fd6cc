#include "core/record/pin.h"

#include "core/base/error_code.h"
#include "core/base/plain_text.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <sodium.h>

namespace core {

/// More than any twelve characters that somebody types: what is longer is no PIN.
struct Pin::Bytes {
    std::array<char, 256> text{};
    std::size_t size = 0;
};

namespace {

/// Wipes a text on every way out.
class Wiped {
public:
    explicit Wiped(std::string& text)
        : m_text(text) {}
    ~Wiped() { wipe(m_text); }
    Wiped(const Wiped&) = delete;
    Wiped& operator=(const Wiped&) = delete;

private:
    std::string& m_text;
};

} // namespace

void wipe(std::string& text) {
    text.resize(text.capacity());
    sodium_memzero(text.data(), text.size());
    text.clear();
}

void Pin::Wipe::operator()(Bytes* bytes) const {
    sodium_memzero(bytes, sizeof *bytes);
    delete bytes;
}

Pin::Pin(const std::string& text)
    : m_bytes(new Bytes) {
    std::copy(text.begin(), text.end(), m_bytes->text.begin());
    m_bytes->size = text.size();
}

Result<Pin> Pin::from(std::string&& text) {
    const Wiped given(text);
    std::string pin = composed(withoutOuterBlanks(text));
    const Wiped made(pin);
    if (!isUtf8(pin) || holdsUnseen(pin)) return Error{ErrorCode::PinUnseen};
    const std::size_t seen = charactersSeen(pin);
    if (seen < fewest || seen > most || pin.size() > sizeof(Bytes::text)) return Error{ErrorCode::PinLength};
    return Pin(pin);
}

Result<std::string> Pin::sealed() const {
    std::array<char, crypto_pwhash_STRBYTES> text{};
    const int failed =
        crypto_pwhash_str(text.data(), m_bytes->text.data(), m_bytes->size,
                          crypto_pwhash_OPSLIMIT_INTERACTIVE, crypto_pwhash_MEMLIMIT_INTERACTIVE);
    if (failed != 0) return Error{ErrorCode::MemoryShort};
    return std::string(text.data());
}

Result<bool> Pin::opens(const std::string& sealed) const {
    std::array<char, crypto_pwhash_STRBYTES> text{};
    if (sealed.size() >= text.size()) return false;
    std::copy(sealed.begin(), sealed.end(), text.begin());
    // Other limits than ours could take all memory there is.
    if (crypto_pwhash_str_needs_rehash(text.data(), crypto_pwhash_OPSLIMIT_INTERACTIVE,
                                       crypto_pwhash_MEMLIMIT_INTERACTIVE) != 0)
        return false;
    errno = 0;
    if (crypto_pwhash_str_verify(text.data(), m_bytes->text.data(), m_bytes->size) == 0) return true;
    if (errno == ENOMEM) return Error{ErrorCode::MemoryShort};
    return false;
}

} // namespace core
