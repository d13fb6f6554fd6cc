#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace core {

/// The attributes of one element. Names come without their prefix, as writers choose prefixes freely; of
/// those that other vocabularies repeat (`calcext:value-type`), the first stands.
class XmlAttributes {
public:
    std::string_view operator[](std::string_view name) const; ///< empty when it is not there
    bool has(std::string_view name) const;
    /// A whole number within the bounds; `otherwise` when it is not there. Throws SpreadsheetFault for
    /// another text, and for a number outside.
    int number(std::string_view name, int low, int high, int otherwise) const;

    void add(std::string_view name, std::string_view value);
    void clear() { m_size = 0; }

private:
    std::vector<std::pair<std::string, std::string>> m_attributes; ///< kept, to be filled again
    std::size_t m_size = 0;
};

/// What a reader of one part is told. Names of elements come without their prefix.
class XmlEvents {
public:
    virtual ~XmlEvents() = default;
    virtual void start(std::string_view name, const XmlAttributes& attributes) = 0;
    virtual void end(std::string_view name) = 0;
    virtual void text(std::string_view) {}
};

/// How many bytes readXml puts behind a text.
inline constexpr std::size_t behindXml = 32;

/// Throws SpreadsheetFault for what is no XML, and for a document type, which no workbook has and bombs are
/// made of. Does not recurse, whatever the nesting.
void readXml(std::string xml, XmlEvents& events);

/// A whole decimal number of those bounds, or SpreadsheetFault.
int wholeNumber(std::string_view text, int low, int high);

} // namespace core
