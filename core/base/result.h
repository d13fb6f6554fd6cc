#pragma once

#include "core/base/error.h"

#include <cassert>
#include <utility>
#include <variant>

namespace core {

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
