#pragma once

#include <QString>

#include <optional>

namespace scanner {

/// Where a camera of the network sends its pictures: RTSP, or JPEG pictures in a row over HTTP (MJPEG).
struct NetworkAddress {
    enum class Way { Rtsp, Http };

    Way way = Way::Rtsp;
    QString address; ///< without user and password, e.g. rtsp://camera.local:554/stream1?profile=2
    QString user;
    QString password;

    /// For people and logs: neither user nor password nor what follows a question mark, where some cameras
    /// have a password, too.
    QString shown() const;
};

/// An address as somebody writes it, user and password in front of the host; nullopt unless it begins with
/// rtsp://, rtsps://, http:// or https:// and names a host.
std::optional<NetworkAddress> networkAddressOf(const QString& written);

} // namespace scanner
