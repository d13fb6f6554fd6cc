#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"
#include "tests/app/gui/fake_webcam.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>

int main(int argc, char** argv) {
    support::fakeWebcams(); // before anything asks for cameras
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setApplicationName("tholepin-tests");
    QApplication::setOrganizationName("tholepin-tests");
    app::dress(application, app::paletteOf("light"));
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
