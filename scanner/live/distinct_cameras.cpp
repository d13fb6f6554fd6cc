#include "scanner/live/distinct_cameras.h"

#include <algorithm>

namespace scanner {
namespace {

bool contains(const std::vector<ListedCamera>& listed, const QByteArray& id) {
    return std::any_of(listed.begin(), listed.end(),
                       [&](const ListedCamera& camera) { return camera.id == id; });
}

} // namespace

std::vector<ListedCamera> DistinctCameras::update(const std::vector<ListedCamera>& listed) {
    forgetGone(listed);
    for (const ListedCamera& camera : listed)
        if (!isKnown(camera.id)) meet(camera);
    m_starting = false;
    std::vector<ListedCamera> shown;
    for (const Known& known : m_known)
        shown.push_back(known.camera);
    return shown;
}

void DistinctCameras::stopExpectingDoubles() {
    m_expecting = false;
}

void DistinctCameras::forgetGone(const std::vector<ListedCamera>& listed) {
    std::erase_if(m_leftovers, [&](const QByteArray& id) { return !contains(listed, id); });
    std::erase_if(m_known, [&](const Known& known) {
        const bool first = contains(listed, known.camera.id);
        const bool second = !known.doubleId.isEmpty() && contains(listed, known.doubleId);
        const bool gone = !first || (!known.doubleId.isEmpty() && !second);
        if (gone && first) m_leftovers.push_back(known.camera.id);
        if (gone && second) m_leftovers.push_back(known.doubleId);
        return gone;
    });
}

void DistinctCameras::meet(const ListedCamera& camera) {
    const auto single = std::find_if(m_known.begin(), m_known.end(), [&](const Known& known) {
        return m_expecting && known.expectsDouble && known.doubleId.isEmpty() &&
               known.camera.description == camera.description && known.camera.kind == camera.kind;
    });
    if (!m_starting && single != m_known.end())
        single->doubleId = camera.id;
    else
        m_known.push_back({camera, {}, m_starting});
}

bool DistinctCameras::isKnown(const QByteArray& id) const {
    return std::find(m_leftovers.begin(), m_leftovers.end(), id) != m_leftovers.end() ||
           std::any_of(m_known.begin(), m_known.end(),
                       [&](const Known& known) { return known.camera.id == id || known.doubleId == id; });
}

} // namespace scanner
