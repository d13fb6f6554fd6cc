#pragma once

#include <cassert>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

namespace core {

/// Why something that may fail in the field failed. The programs turn a kind into a sentence and an exit
/// code.
enum class ErrorKind {
    BadInput,       ///< what was given cannot be used; nothing was changed
    NotFound,       ///< a name or code that the club does not have
    NotAllowed,     ///< against a rule of the record, e.g. a second signature
    FileExists,     ///< refuses to write over it
    FileMissing,    ///<
    NotAClubFile,   ///< some other file
    FileUnfinished, ///< creation was cut short before anything was recorded: create it again
    FileNewer,      ///< written by a newer Tholepin
    FileLocked,     ///< another program holds it
    FileDamaged,    ///<
    DiskFailed,     ///< full, read-only, I/O error
};

/// Plain detail for one failure: `what` happened, `where`, and `mend`, what to do about it. No full stop at
/// the end.
struct Error {
    ErrorKind kind = ErrorKind::BadInput;
    std::string what;
    std::string where; ///< file, or file:row:column; may be empty
    std::string mend;  ///< may be empty
};

/// A value, or the reason why there is none. value() asserts; look first.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value)
        : m_state(std::in_place_index<0>, std::move(value)) {}
    Result(Error error)
        : m_state(std::in_place_index<1>, std::move(error)) {}

    explicit operator bool() const { return m_state.index() == 0; }
    T& value() & { return assert(*this), std::get<0>(m_state); }
    const T& value() const& { return assert(*this), std::get<0>(m_state); }
    T&& value() && { return assert(*this), std::get<0>(std::move(m_state)); }
    T& operator*() { return value(); }
    const T& operator*() const { return value(); }
    T* operator->() { return &value(); }
    const T* operator->() const { return &value(); }
    const Error& error() const { return std::get<1>(m_state); }

private:
    std::variant<T, Error> m_state;
};

/// Success without a value, or the reason of the failure.
struct Done {};
using Outcome = Result<Done>;

} // namespace core
