#pragma once

#include <QWidget>

class QLabel;
class QLineEdit;

namespace scanner {
struct NetworkAddress;
}

namespace app {

/// Asks for a camera of the network: its address, and user and password where it wants them. The address is
/// remembered on this machine; user and password are not, and are shown nowhere once they have been used.
class NetworkRow : public QWidget {
    Q_OBJECT

public:
    explicit NetworkRow(QWidget* parent);

    void ask(); ///< shows itself with the address of last time

signals:
    void addressGiven(const scanner::NetworkAddress& address);

private:
    void take();

    QLineEdit* m_address;
    QLineEdit* m_user;
    QLineEdit* m_password;
    QLabel* m_fault;
};

} // namespace app
