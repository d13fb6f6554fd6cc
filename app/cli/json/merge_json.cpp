#include "app/cli/json/merge_json.h"

#include "app/text/merge_sentences.h"

namespace app {
namespace {

Json lookAt(const core::LookAt& each) {
    const std::string where = !each.item.id.empty() ? each.item.id : each.name;
    return {{"kind", core::nameOf(each.kind)}, {"what", lookAtInWords(each).toStdString()}, {"where", where}};
}

} // namespace

Json cameInJson(const core::CameIn& cameIn) {
    return {{"facts", cameIn.facts},
            {"machines", cameIn.machines},
            {"checks", cameIn.checks},
            {"sightings", cameIn.sightings},
            {"changes", cameIn.changes},
            {"left_out", cameIn.leftOut},
            {"look_at", listOf(cameIn.lookAt, lookAt)}};
}

std::string mergeJson(const core::CameIn& cameIn) {
    return written(cameInJson(cameIn));
}

} // namespace app
