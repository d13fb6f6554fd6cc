#include "core/club/hub_link.h"

#include <poll.h>
#include <sys/eventfd.h>
#include <unistd.h>

namespace core {

std::unique_ptr<HubConnection> connectedHub(const std::string& url) {
    const auto checked = hubUrlFrom(url);
    if (!checked) throw StoreFailure(checked.error());
    return std::make_unique<HubConnection>(*checked);
}

void sayWhere(Error& error, const std::string& url) {
    const bool isUrlUnfit =
        error.code == ErrorCode::HubUrlUnreadable || error.code == ErrorCode::HubUrlWithPassword;
    if (error.where.empty() && !isUrlUnfit) error.where = url;
}

HubLink::Line::Line()
    : wake(::eventfd(0, EFD_CLOEXEC | EFD_NONBLOCK)) {}

HubLink::Line::~Line() {
    if (wake >= 0) ::close(wake);
}

void HubLink::Line::connect(const std::string& to) {
    drop();
    connection = connectedHub(to);
    url = to;
}

void HubLink::Line::drop() {
    if (connection) roundTripsBefore += connection->roundTrips();
    connection.reset();
}

HubLink::HubLink()
    : m_line(std::make_unique<Line>()) {}
HubLink::~HubLink() = default;

HubLink::Waited HubLink::wait(std::chrono::milliseconds atMost) {
    pollfd wake{m_line->wake, POLLIN, 0};
    const auto isStopped = [&] { return ::poll(&wake, 1, 0) > 0; };
    if (!m_line->connection || m_line->club == 0) {
        ::poll(&wake, 1, static_cast<int>(atMost.count()));
        return isStopped() ? Waited::Stopped : Waited::TimeUp;
    }
    try {
        // What was sent before it is listened for is not heard of: it is looked for.
        if (m_line->connection->listenTo(m_line->club)) return isStopped() ? Waited::Stopped : Waited::News;
        if (m_line->connection->waitForNews(atMost, m_line->wake)) return Waited::News;
    } catch (const StoreFailure&) {
        m_line->drop();
        return isStopped() ? Waited::Stopped : Waited::News;
    }
    return isStopped() ? Waited::Stopped : Waited::TimeUp;
}

void HubLink::stop() noexcept {
    const std::uint64_t one = 1;
    (void)!::write(m_line->wake, &one, sizeof one);
}

int HubLink::roundTrips() const {
    return m_line->roundTripsBefore + (m_line->connection ? m_line->connection->roundTrips() : 0);
}

} // namespace core
