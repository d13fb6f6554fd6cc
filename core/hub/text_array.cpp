#include "core/hub/text_array.h"

namespace core {

void TextArray::add(std::string_view text) {
    if (m_text.size() > 1) m_text += ',';
    m_text += '"';
    for (std::size_t from = 0;;) {
        const std::size_t at = text.find_first_of("\\\"", from);
        m_text += text.substr(from, at == std::string_view::npos ? at : at - from);
        if (at == std::string_view::npos) break;
        m_text += '\\';
        m_text += text[at];
        from = at + 1;
    }
    m_text += '"';
}

} // namespace core
