#include "core/hub/hub_connection.h"

#include "core/base/error_code.h"
#include "core/base/store_failure.h"
#include "core/hub/stoppable_connection.h"
#include "core/hub/time_limit.h"

#include <algorithm>
#include <array>
#include <poll.h>
#include <pqxx/pqxx>
#include <utility>

namespace core {
namespace {

using namespace std::chrono_literals;

constexpr auto longestCall = 90s, longestConnecting = 10s;

/// The first line of what libpq or the server says, without the word before it.
std::string firstLine(std::string said) {
    said = said.substr(0, said.find('\n'));
    for (const char* before : {"ERROR:", "FATAL:"})
        if (said.starts_with(before)) said.erase(0, 6);
    const auto begin = said.find_first_not_of(' ');
    return begin == std::string::npos ? std::string() : said.substr(begin);
}

/// "12 machine" of a refused fact, see hub.sql.
std::vector<std::string> placeOf(const std::string& said) {
    const auto blank = said.find(' ');
    return {said.substr(0, blank), blank == std::string::npos ? std::string() : said.substr(blank + 1)};
}

/// PostgreSQL, "Error Codes"; TH… are those of hub.sql.
Error errorOfState(const std::string& state, const std::string& said) {
    if (state == "TH001") return {ErrorCode::HubRoleUnknown, {said}};
    if (state == "TH002") return {ErrorCode::HubOtherClub, {said}};
    if (state == "TH003") return {ErrorCode::HubForked, {placeOf(said)[1], placeOf(said)[0]}};
    if (state == "TH004") return {ErrorCode::HubFactRefused, placeOf(said)};
    if (state == "TH005") return {ErrorCode::HubAhead};
    for (const char* missing : {"3F000", "42P01", "42883"})
        if (state == missing) return {ErrorCode::HubNotPrepared};
    // Shut down, not to be connected to, too many connections, too slow: nothing is wrong with what was
    // asked.
    for (const char* passing : {"57", "53", "08", "55P03"})
        if (state.starts_with(passing)) return {ErrorCode::HubNotReached, {said}};
    if (state == "42501") return {ErrorCode::HubNotAllowed, {said}};
    return {ErrorCode::HubRefused, {said}};
}

/// The library leaves the code out of the exceptions that it has a type for.
std::string stateOf(const pqxx::sql_error& error) {
    if (!error.sqlstate().empty()) return error.sqlstate();
    if (dynamic_cast<const pqxx::insufficient_privilege*>(&error) != nullptr) return "42501";
    if (dynamic_cast<const pqxx::undefined_table*>(&error) != nullptr) return "42P01";
    if (dynamic_cast<const pqxx::undefined_function*>(&error) != nullptr) return "42883";
    if (dynamic_cast<const pqxx::insufficient_resources*>(&error) != nullptr) return "53000";
    return {};
}

/// Runs a call and throws what became of it.
template <class Call>
auto told(Call call) {
    try {
        return call();
    } catch (const pqxx::broken_connection& broken) {
        throw StoreFailure({ErrorCode::HubNotReached, {firstLine(broken.what())}});
    } catch (const pqxx::sql_error& refused) {
        throw StoreFailure(errorOfState(stateOf(refused), firstLine(refused.what())));
    } catch (const pqxx::failure& other) {
        throw StoreFailure({ErrorCode::HubRefused, {firstLine(other.what())}});
    }
}

} // namespace

namespace {

/// Hears of news; those that this very connection caused are none.
struct Ear : pqxx::notification_receiver {
    Ear(pqxx::connection_base& connection, const std::string& channel, int club)
        : pqxx::notification_receiver(connection, channel)
        , ofClub(club)
        , m_own(connection.backendpid()) {}
    void operator()(const std::string&, int from) override { isNews = isNews || from != m_own; }

    const int ofClub;
    bool isNews = false;

private:
    const int m_own;
};

} // namespace

struct HubConnection::Line {
    Line(const std::string& settings, int wake)
        : connection(settings, longestConnecting, wake)
        , silence(connection) {}

    TimeLimit limit{longestCall};
    StoppableConnection connection;
    pqxx::quiet_errorhandler silence; ///< the library would write to standard error
    std::unique_ptr<Ear> ear;
};

HubConnection::HubConnection(const HubUrl& url, int wake)
    : m_line(told([&] { return std::make_unique<Line>(url.connection, wake); })) {}

HubConnection::~HubConnection() = default;

pqxx::result HubConnection::run(const char* statement, const std::vector<std::string>& parameters) {
    ++m_roundTrips;
    const TimeLimit::Call limited(m_line->limit, m_line->connection.sock());
    return told([&] {
        pqxx::nontransaction work(m_line->connection);
        return work.exec_params(statement, pqxx::prepare::make_dynamic_params(parameters));
    });
}

pqxx::result HubConnection::runBinary(const char* statement, const std::vector<std::string>& parameters) {
    ++m_roundTrips;
    const TimeLimit::Call limited(m_line->limit, m_line->connection.sock());
    const std::vector<pqxx::binarystring> binary(parameters.begin(), parameters.end());
    return told([&] {
        pqxx::nontransaction work(m_line->connection);
        return work.exec_params(statement, pqxx::prepare::make_dynamic_params(binary));
    });
}

void HubConnection::script(const std::string& statements) {
    const TimeLimit::Call limited(m_line->limit, m_line->connection.sock());
    told([&] {
        pqxx::work work(m_line->connection);
        work.exec(statements);
        work.commit();
    });
}

std::string HubConnection::quotedName(const std::string& name) const {
    return m_line->connection.quote_name(name);
}

bool HubConnection::listenTo(int club) {
    if (m_line->ear && m_line->ear->ofClub == club) return false;
    const TimeLimit::Call limited(m_line->limit, m_line->connection.sock());
    told([&] {
        m_line->ear =
            std::make_unique<Ear>(m_line->connection, "tholepin_club_" + std::to_string(club), club);
    });
    return true;
}

bool HubConnection::waitForNews(std::chrono::milliseconds atMost, int wake) {
    const auto end = std::chrono::steady_clock::now() + atMost;
    for (;;) {
        told([&] { m_line->connection.get_notifs(); });
        if (m_line->ear && std::exchange(m_line->ear->isNews, false)) return true;
        const auto left =
            std::chrono::duration_cast<std::chrono::milliseconds>(end - std::chrono::steady_clock::now());
        if (left <= 0ms) return false;
        constexpr std::int64_t longestLook = 60000;
        std::array<pollfd, 2> handles{{{m_line->connection.sock(), POLLIN, 0}, {wake, POLLIN, 0}}};
        ::poll(handles.data(), handles.size(), static_cast<int>(std::min(left.count(), longestLook)));
        if (handles[1].revents != 0) return false;
    }
}

} // namespace core
