#include "tests/support/network_cameras.h"

#include <QBuffer>

#include <arpa/inet.h>
#include <netinet/in.h>
#include <poll.h>
#include <sys/socket.h>
#include <unistd.h>

#include <chrono>
#include <cstdlib>
#include <utility>

namespace support {
namespace {

constexpr const char* boundary = "picture";

bool sendAll(int client, const std::string& bytes) {
    for (std::size_t sent = 0; sent < bytes.size();) {
        const auto now = ::send(client, bytes.data() + sent, bytes.size() - sent, MSG_NOSIGNAL);
        if (now <= 0) return false;
        sent += static_cast<std::size_t>(now);
    }
    return true;
}

/// The head of a request, to its empty line.
std::string requestOf(int client) {
    std::string request;
    for (char part[1024]; request.find("\r\n\r\n") == std::string::npos;) {
        const auto got = ::recv(client, part, sizeof part, 0);
        if (got <= 0) return {};
        request.append(part, static_cast<std::size_t>(got));
    }
    return request;
}

bool isReady(int socket, int milliseconds) {
    pollfd wanted{socket, POLLIN, 0};
    return ::poll(&wanted, 1, milliseconds) > 0;
}

} // namespace

MjpegCamera::MjpegCamera(const QImage& picture, std::string user, const std::string& password) {
    QBuffer buffer(&m_jpeg);
    picture.save(&buffer, "JPEG", 90);
    const QByteArray both = QByteArray::fromStdString(std::move(user) + ":" + password);
    m_authorization = "Authorization: Basic " + both.toBase64().toStdString();
}

MjpegCamera::~MjpegCamera() {
    switchOff();
}

void MjpegCamera::switchOn() {
    m_listening = ::socket(AF_INET, SOCK_STREAM | SOCK_CLOEXEC, 0);
    const int yes = 1;
    ::setsockopt(m_listening, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes);
    sockaddr_in address{};
    address.sin_family = AF_INET;
    address.sin_port = htons(m_port);
    address.sin_addr.s_addr = htonl(INADDR_LOOPBACK);
    socklen_t size = sizeof address;
    auto* place = reinterpret_cast<sockaddr*>(&address);
    if (::bind(m_listening, place, size) != 0 || ::listen(m_listening, 4) != 0) std::abort();
    ::getsockname(m_listening, place, &size);
    m_port = ntohs(address.sin_port);
    m_thread = std::jthread([this](const std::stop_token& stop) { serve(stop); });
}

void MjpegCamera::switchOff() {
    if (!m_thread.joinable()) return;
    m_thread.request_stop();
    m_thread.join();
    ::close(std::exchange(m_listening, -1));
}

std::string MjpegCamera::hostAndPort() const {
    return "127.0.0.1:" + std::to_string(m_port);
}

void MjpegCamera::serve(const std::stop_token& stop) {
    while (!stop.stop_requested()) {
        if (!isReady(m_listening, 20)) continue;
        const int client = ::accept(m_listening, nullptr, nullptr);
        if (client < 0) continue;
        answer(client, stop);
        ::close(client);
    }
}

void MjpegCamera::answer(int client, const std::stop_token& stop) const {
    if (requestOf(client).find(m_authorization) == std::string::npos) {
        sendAll(client, "HTTP/1.1 401 Unauthorized\r\nWWW-Authenticate: Basic realm=\"camera\"\r\n"
                        "Content-Length: 0\r\nConnection: close\r\n\r\n");
        return;
    }
    const std::string head = std::string("HTTP/1.1 200 OK\r\nConnection: close\r\nContent-Type: "
                                         "multipart/x-mixed-replace; boundary=") +
                             boundary + "\r\n\r\n";
    const std::string part =
        std::string("--") + boundary +
        "\r\nContent-Type: image/jpeg\r\nContent-Length: " + std::to_string(m_jpeg.size()) + "\r\n\r\n" +
        m_jpeg.toStdString() + "\r\n";
    bool there = sendAll(client, head);
    while (there && !stop.stop_requested()) {
        if (!m_isFrozen) there = sendAll(client, part);
        std::this_thread::sleep_for(std::chrono::milliseconds(100)); // the camera's ten pictures a second
        there = there && !isReady(client, 0);                        // else it has closed
    }
}

} // namespace support
