#include "app/gui/camera/network_row.h"

#include "app/gui/widgets/labels.h"
#include "scanner/files/network_address.h"

#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>

namespace app {
namespace {

QString addressKey() {
    return QStringLiteral("camera/network");
}

} // namespace

NetworkRow::NetworkRow(QWidget* parent)
    : QWidget(parent)
    , m_address(wordsEdit(this, "networkAddress", tr("address of the camera"), tr("rtsp://… or http://…")))
    , m_user(wordsEdit(this, "networkUser", tr("the camera's user, if it asks for one"), tr("user")))
    , m_password(
          wordsEdit(this, "networkPassword", tr("the camera's password, if it asks for one"), tr("password")))
    , m_fault(wordsLabel(this, "look", "networkFault")) {
    m_password->setEchoMode(QLineEdit::Password);
    m_fault->hide();
    auto* watch = wordsButton(this, tr("use this camera"), "networkWatch");
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_address, 0, 0, 1, 3);
    layout->addWidget(m_user, 1, 0);
    layout->addWidget(m_password, 1, 1);
    layout->addWidget(watch, 1, 2);
    layout->addWidget(m_fault, 2, 0, 1, 3);
    connect(watch, &QPushButton::clicked, this, &NetworkRow::take);
    for (QLineEdit* edit : {m_address, m_user, m_password})
        connect(edit, &QLineEdit::returnPressed, this, &NetworkRow::take);
    hide();
}

void NetworkRow::ask() {
    m_address->setText(QSettings().value(addressKey()).toString());
    m_user->clear();
    m_password->clear();
    m_fault->hide();
    show();
    m_address->setFocus();
}

void NetworkRow::take() {
    auto address = scanner::networkAddressOf(m_address->text());
    m_fault->setVisible(!address);
    if (!address) {
        m_fault->setText(
            tr("This is no address of a camera. It begins with rtsp:// or http:// and stands in the "
               "camera's manual, e.g. rtsp://192.168.1.20/stream1."));
        return;
    }
    if (!m_user->text().isEmpty()) address->user = m_user->text();
    if (!m_password->text().isEmpty()) address->password = m_password->text();
    QSettings().setValue(addressKey(), address->shown());
    m_password->clear();
    hide();
    emit addressGiven(*address);
}

} // namespace app
