#pragma once

#include <string>
#include <string_view>

namespace core {

/// Texts as one parameter of a statement: PostgreSQL's array literal, each element in double quotes, with a
/// backslash before each of those and of its own (PostgreSQL, "Array Input and Output Syntax"). No NULLs.
class TextArray {
public:
    void add(std::string_view text);
    std::string literal() const { return m_text + '}'; }

private:
    std::string m_text = "{";
};

} // namespace core
