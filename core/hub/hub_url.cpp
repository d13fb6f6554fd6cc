#include "core/hub/hub_url.h"

#include "core/base/error_code.h"

#include <algorithm>
#include <cstdlib>
#include <libpq-fe.h>
#include <map>
#include <memory>
#include <optional>
#include <utility>

namespace core {
namespace {

using Settings = std::map<std::string, std::string>;

/// Seconds and milliseconds after which nobody waits any more. A server that is stopped answers neither; what
/// libpq does not end, TimeLimit does.
const std::pair<const char*, const char*> limits[] = {
    {"connect_timeout", "10"},   {"keepalives_idle", "15"},     {"keepalives_interval", "5"},
    {"keepalives_count", "3"},   {"tcp_user_timeout", "30000"}, {"fallback_application_name", "tholepin"},
    {"client_encoding", "UTF8"},
};
constexpr const char* serverLimits =
    "-c statement_timeout=60s -c lock_timeout=30s "
    "-c idle_in_transaction_session_timeout=60s -c client_min_messages=warning";

/// What a URL does not hold unless it is written as a number (RFC 3986, "Characters") is no part of one.
bool isUrl(const std::string& text) {
    const bool isPlain =
        std::none_of(text.begin(), text.end(), [](unsigned char c) { return c <= ' ' || c == 0x7f; });
    return isPlain && (text.starts_with("postgresql://") || text.starts_with("postgres://"));
}

/// Only what the text says. Empty: libpq cannot read it; why it cannot may quote a password.
std::optional<Settings> settingsOf(const std::string& text) {
    using Options = std::unique_ptr<PQconninfoOption, decltype(&PQconninfoFree)>;
    char* said = nullptr;
    const Options options(PQconninfoParse(text.c_str(), &said), &PQconninfoFree);
    PQfreemem(said);
    if (!options) return std::nullopt;
    Settings settings;
    for (const PQconninfoOption* each = options.get(); each->keyword != nullptr; ++each)
        if (each->val != nullptr) settings.emplace(each->keyword, each->val);
    return settings;
}

std::string valueOf(const Settings& settings, const std::string& key) {
    const auto found = settings.find(key);
    return found == settings.end() ? std::string() : found->second;
}

/// A socket, or this machine by a name or address that cannot be another's. Of several hosts, all.
bool isLocal(const std::string& hosts) {
    std::size_t from = 0;
    for (;;) {
        const std::size_t end = hosts.find(',', from);
        const std::string host = hosts.substr(from, end == std::string::npos ? end : end - from);
        const bool isHere = host.empty() || host.front() == '/' || host.front() == '@' ||
                            host == "localhost" || host == "127.0.0.1" || host == "::1";
        if (!isHere) return false;
        if (end == std::string::npos) return true;
        from = end + 1;
    }
}

/// What the URL does not say, libpq takes from the environment or a file of services, which may name any
/// host.
bool isSurelyLocal(const Settings& settings) {
    if (settings.contains("service") || std::getenv("PGSERVICE") != nullptr) // NOLINT(concurrency-mt-unsafe)
        return false;
    for (const auto& [key, variable] : {std::pair("host", "PGHOST"), std::pair("hostaddr", "PGHOSTADDR")}) {
        const char* outside = std::getenv(variable); // NOLINT(concurrency-mt-unsafe): nothing here sets it
        const std::string host = settings.contains(key) ? valueOf(settings, key) : outside ? outside : "";
        if (!isLocal(host)) return false;
    }
    return true;
}

/// libpq, "Keyword/Value Connection Strings": in single quotes, with \ before \ and '.
std::string quoted(const std::string& value) {
    std::string text = "'";
    for (const char c : value) {
        if (c == '\\' || c == '\'') text += '\\';
        text += c;
    }
    return text + '\'';
}

std::string connectionOf(Settings settings) {
    if (!settings.contains("sslmode") && !isSurelyLocal(settings)) settings["sslmode"] = "verify-full";
    for (const auto& [key, value] : limits)
        settings.emplace(key, value);
    std::string& options = settings["options"];
    options = serverLimits + (options.empty() ? std::string() : ' ' + options);
    std::string text;
    for (const auto& [key, value] : settings)
        text += key + '=' + quoted(value) + ' ';
    return text;
}

} // namespace

Result<HubUrl> hubUrlFrom(const std::string& text) {
    const auto settings = isUrl(text) ? settingsOf(text) : std::nullopt;
    if (!settings) return Error{ErrorCode::HubUrlUnreadable};
    for (const char* secret : {"password", "sslpassword"})
        if (settings->contains(secret)) return Error{ErrorCode::HubUrlWithPassword};
    return HubUrl{text, connectionOf(*settings)};
}

} // namespace core
