#include "app/gui/camera/network_row.h"

#include "scanner/files/network_address.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSettings>

#include <gtest/gtest.h>

#include <optional>

namespace {

struct AskedForACamera : testing::Test {
    AskedForACamera() {
        QObject::connect(&row, &app::NetworkRow::addressGiven,
                         [this](const auto& address) { given = address; });
        row.ask();
    }
    void write(const char* field, const QString& text) { row.findChild<QLineEdit*>(field)->setText(text); }
    void press() { row.findChild<QPushButton*>("networkWatch")->click(); }

    QWidget page;
    app::NetworkRow row{&page};
    std::optional<scanner::NetworkAddress> given;
};

} // namespace

TEST_F(AskedForACamera, theAddressIsGivenAndKeptWithoutThePassword) {
    write("networkAddress", "rtsp://192.168.1.20/stream1");
    write("networkUser", "shed");
    write("networkPassword", "secret");
    press();
    ASSERT_TRUE(given);
    EXPECT_EQ(given->address, "rtsp://192.168.1.20/stream1");
    EXPECT_EQ(given->user, "shed");
    EXPECT_EQ(given->password, "secret");
    EXPECT_TRUE(row.isHidden());
    row.ask();
    EXPECT_EQ(row.findChild<QLineEdit*>("networkAddress")->text(), "rtsp://192.168.1.20/stream1");
    EXPECT_TRUE(row.findChild<QLineEdit*>("networkPassword")->text().isEmpty());
    for (const QString& key : QSettings().allKeys())
        EXPECT_FALSE(QSettings().value(key).toString().contains("secret")) << key.toStdString();
}

TEST_F(AskedForACamera, whatIsNoAddressIsNotGiven) {
    write("networkAddress", "192.168.1.20");
    press();
    EXPECT_FALSE(given);
    EXPECT_FALSE(row.isHidden());
    EXPECT_TRUE(row.findChild<QLabel*>("networkFault")->isVisibleTo(&row));
}
