#pragma once

#include <functional>
#include <string>

namespace scanner::reader {

/// Says whether a text is a tag of the club's kind; empty when the caller knows no tags.
using TextTest = std::function<bool(const std::string& text)>;

} // namespace scanner::reader
