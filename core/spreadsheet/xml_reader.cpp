#include "core/spreadsheet/xml_reader.h"

#include "core/spreadsheet/spreadsheet_fault.h"

#include <algorithm>
#include <cassert>
#include <charconv>
#include <sstream>

#include <orcus/cell_buffer.hpp>
#include <orcus/sax_parser.hpp>

namespace core {
namespace {

constexpr std::size_t mostAttributes = 1000; ///< of one element

/// Other vocabularies of the same element that repeat a name of the standard's.
bool isForeign(std::string_view prefix) {
    return prefix == "calcext" || prefix == "loext" || prefix == "xmlns";
}

class Handler : public orcus::sax_handler {
public:
    explicit Handler(XmlEvents& events)
        : m_events(events) {}

    void doctype(const orcus::sax::doctype_declaration&) { refuse(ErrorCode::SpreadsheetUnreadable); }
    void end_declaration(std::string_view) { m_attributes.clear(); }
    void start_element(const orcus::sax::parser_element& element) {
        ++m_depth;
        m_events.start(element.name, m_attributes);
        m_attributes.clear();
    }
    void end_element(const orcus::sax::parser_element& element) {
        --m_depth;
        m_events.end(element.name);
    }
    void characters(std::string_view text, bool) { m_events.text(text); }
    void attribute(const orcus::sax::parser_attribute& attribute) {
        if (!isForeign(attribute.ns)) m_attributes.add(attribute.name, attribute.value);
    }

    bool isWhole() const { return m_depth == 0; }

private:
    int m_depth = 0;
    XmlEvents& m_events;
    XmlAttributes m_attributes;
};

} // namespace

std::string_view XmlAttributes::operator[](std::string_view name) const {
    const auto end = m_attributes.begin() + static_cast<std::ptrdiff_t>(m_size);
    const auto found =
        std::find_if(m_attributes.begin(), end, [&](const auto& each) { return each.first == name; });
    return found == end ? std::string_view() : std::string_view(found->second);
}

bool XmlAttributes::has(std::string_view name) const {
    const auto end = m_attributes.begin() + static_cast<std::ptrdiff_t>(m_size);
    return std::any_of(m_attributes.begin(), end, [&](const auto& each) { return each.first == name; });
}

int XmlAttributes::number(std::string_view name, int low, int high, int otherwise) const {
    return has(name) ? wholeNumber((*this)[name], low, high) : otherwise;
}

void XmlAttributes::add(std::string_view name, std::string_view value) {
    if (m_size == mostAttributes) refuse(ErrorCode::SpreadsheetUnreadable);
    if (m_size == m_attributes.size()) m_attributes.emplace_back();
    m_attributes[m_size].first = name;
    m_attributes[m_size++].second = value;
}

void readXml(std::string xml, XmlEvents& events) {
    // The parser looks at the character behind the end, and at a few more.
    const std::size_t size = xml.size();
    xml.append(behindXml, '\0');
    Handler handler(events);
    orcus::sax_parser<Handler>(xml.data(), size, handler).parse();
    if (!handler.isWhole()) refuse(ErrorCode::SpreadsheetUnreadable); // the parser takes an early end
}

int wholeNumber(std::string_view text, int low, int high) {
    int number = 0;
    const auto [end, failure] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (failure != std::errc() || end != text.data() + text.size() || number < low || number > high)
        refuse(ErrorCode::SpreadsheetUnreadable);
    return number;
}

} // namespace core
