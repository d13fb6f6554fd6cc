#pragma once

#include "core/base/result.h"

#include <string>

namespace core {

/// Where a hub is, as it was given and looked through: without a password.
struct HubUrl {
    std::string text;       ///< "postgresql://user@host/database?…"
    std::string connection; ///< what the connection is made of: keywords and values of libpq
};

/// Reads a PostgreSQL URL (libpq, "Connection URIs"). A host that is not local is connected to with
/// sslmode=verify-full unless the URL says otherwise. HubUrlUnreadable; HubUrlWithPassword: in whatever form.
/// Neither error says the text, which may hold a password.
Result<HubUrl> hubUrlFrom(const std::string& text);

} // namespace core
