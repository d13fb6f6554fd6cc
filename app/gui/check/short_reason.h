#pragma once

#include <QString>

namespace core {
struct Finding;
}

namespace app {

/// What is the matter and what to do, in as few words as a line of the list bears. The whole sentence, with
/// rule, anchor and source, is `reasonOf`.
QString shortReasonOf(const core::Finding& finding);

} // namespace app
