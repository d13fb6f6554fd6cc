#pragma once

#include <QByteArray>
#include <QImage>

#include <atomic>
#include <cstdint>
#include <memory>
#include <string>
#include <thread>

namespace support {

/// A camera of the network that shows one picture over RTSP (JPEG, RFC 2435), made of GStreamer's RTSP
/// server, on this machine's own address. The picture's sides are multiples of 8.
class RtspCamera {
public:
    explicit RtspCamera(const QImage& picture);
    ~RtspCamera();

    void switchOn(); ///< on the port that it had before
    void switchOff();
    std::string address() const; ///< once it has been on

private:
    struct Server;

    QByteArray m_jpeg;
    std::string m_port = "0";
    std::unique_ptr<Server> m_server;
};

/// The same as JPEG pictures in a row over HTTP (multipart/x-mixed-replace, RFC 2046), ten a second, for
/// those who name user and password (RFC 7617).
class MjpegCamera {
public:
    MjpegCamera(const QImage& picture, std::string user, const std::string& password);
    ~MjpegCamera();

    void switchOn();
    void switchOff();
    std::string hostAndPort() const; ///< once it has been on
    /// Stays connected and sends nothing.
    void freeze(bool frozen) { m_isFrozen = frozen; }

private:
    void serve(const std::stop_token& stop);
    void answer(int client, const std::stop_token& stop) const;

    QByteArray m_jpeg;
    std::string m_authorization; ///< the header that lets a client in
    std::uint16_t m_port = 0;
    std::atomic<bool> m_isFrozen{false};
    int m_listening = -1;
    std::jthread m_thread;
};

} // namespace support
