#include "core/record/signature_checks.h"

#include "core/record/machine_key.h"

#include <algorithm>
#include <system_error>
#include <utility>

namespace core {
namespace {

constexpr unsigned mostThreads = 8; ///< with the owner's

} // namespace

SignatureChecks::~SignatureChecks() {
    {
        const std::lock_guard lock(m_mutex);
        m_isOver = true;
    }
    m_changed.notify_all();
    for (std::thread& thread : m_threads)
        thread.join();
}

void SignatureChecks::add(const Fact& fact, const std::string& publicKey) {
    m_filling.push_back({fact.hash, fact.signature, publicKey});
    ++m_added;
    if (m_filling.size() < batchSize) return;
    if (m_threads.empty()) startThreads();
    handOver();
}

void SignatureChecks::handOver() {
    {
        const std::lock_guard lock(m_mutex);
        m_batches.push_back({std::exchange(m_filling, {}), {}});
    }
    m_changed.notify_one();
}

/// As many as work at once beside the owner, who helps at the end.
void SignatureChecks::startThreads() {
    const unsigned wanted = std::min(std::thread::hardware_concurrency(), mostThreads);
    try {
        while (m_threads.size() + 1 < wanted)
            m_threads.emplace_back([this] { work(); });
    } catch (const std::system_error&) { // no more of them: the owner does it
    }
}

void SignatureChecks::work() {
    std::unique_lock lock(m_mutex);
    while (!m_isOver)
        if (!lookAtNext(lock)) m_changed.wait(lock);
}

/// False: all are taken.
bool SignatureChecks::lookAtNext(std::unique_lock<std::mutex>& lock) {
    if (m_taken == m_batches.size()) return false;
    Batch& batch = m_batches[m_taken++];
    lock.unlock();
    for (std::size_t i = 0; i < batch.given.size(); ++i) {
        const Given& each = batch.given[i];
        batch.wrong[i] = !isSignedBy(each.hash, each.signature, each.publicKey);
    }
    lock.lock();
    if (++m_done == m_batches.size()) m_changed.notify_all();
    return true;
}

std::vector<std::size_t> SignatureChecks::wrongOnes() {
    if (!m_filling.empty()) handOver();
    std::unique_lock lock(m_mutex);
    while (lookAtNext(lock)) {
    }
    m_changed.wait(lock, [&] { return m_done == m_batches.size(); });
    std::vector<std::size_t> wrong;
    std::size_t before = 0;
    for (const Batch& batch : m_batches) {
        for (std::size_t place = 0; place < batch.given.size(); ++place)
            if (batch.wrong[place]) wrong.push_back(before + place);
        before += batch.given.size();
    }
    m_batches.clear();
    m_added = m_taken = m_done = 0;
    return wrong;
}

} // namespace core
