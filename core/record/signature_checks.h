#pragma once

#include "core/record/fact.h"

#include <bitset>
#include <condition_variable>
#include <cstddef>
#include <deque>
#include <mutex>
#include <string>
#include <thread>
#include <vector>

namespace core {

/// Looks at signatures in threads of its own while its owner goes on: each takes as long as all the rest that
/// is looked at of a fact. Few of them are looked at without a thread.
class SignatureChecks {
public:
    SignatureChecks() = default;
    ~SignatureChecks();
    SignatureChecks(const SignatureChecks&) = delete;
    SignatureChecks& operator=(const SignatureChecks&) = delete;

    /// As isSignedBy.
    void add(const Fact& fact, const std::string& publicKey);
    std::size_t waiting() const { return m_added; } ///< that were added since `wrongOnes`
    /// Waits until all that were added were looked at, and says which are wrong: their places, from 0, in the
    /// order in which they were added.
    std::vector<std::size_t> wrongOnes();

private:
    struct Given {
        std::string hash, signature, publicKey;
    };
    static constexpr std::size_t batchSize = 64;
    struct Batch {
        std::vector<Given> given;
        std::bitset<batchSize> wrong; ///< by place; a thread takes no memory, which might not be there
    };
    void handOver();
    void startThreads();
    void work();
    bool lookAtNext(std::unique_lock<std::mutex>& lock);

    std::vector<Given> m_filling;
    std::size_t m_added = 0;
    std::mutex m_mutex; ///< of all below
    std::condition_variable m_changed;
    std::deque<Batch> m_batches; ///< stay where they are while more are put behind them
    std::size_t m_taken = 0, m_done = 0;
    bool m_isOver = false;
    std::vector<std::thread> m_threads;
};

} // namespace core
