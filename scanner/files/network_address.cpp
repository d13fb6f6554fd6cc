#include "scanner/files/network_address.h"

#include <QUrl>

namespace scanner {

QString NetworkAddress::shown() const {
    return QUrl(address).toString(QUrl::RemoveUserInfo | QUrl::RemoveQuery | QUrl::RemoveFragment);
}

std::optional<NetworkAddress> networkAddressOf(const QString& written) {
    const QUrl url(written.trimmed(), QUrl::StrictMode);
    const QString scheme = url.scheme();
    const bool rtsp = scheme == "rtsp" || scheme == "rtsps", http = scheme == "http" || scheme == "https";
    if (!url.isValid() || url.host().isEmpty() || (!rtsp && !http)) return std::nullopt;
    NetworkAddress found;
    found.way = rtsp ? NetworkAddress::Way::Rtsp : NetworkAddress::Way::Http;
    found.address = url.toString(QUrl::RemoveUserInfo | QUrl::FullyEncoded);
    found.user = url.userName(QUrl::FullyDecoded);
    found.password = url.password(QUrl::FullyDecoded);
    return found;
}

} // namespace scanner
