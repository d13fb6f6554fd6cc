#pragma once

#include "core/register/manifest_record.h"
#include "core/store/database.h"

namespace core::manifestStore {

/// Every manifest the club ever had, and the boats' checks signed by them. Throws StoreFailure.
ManifestRecord read(Database& database);

} // namespace core::manifestStore
