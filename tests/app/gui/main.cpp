#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>

int main(int argc, char** argv) {
    ::testing::InitGoogleTest(&argc, argv);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    // Whoever runs the tests keeps their own settings.
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setApplicationName("tholepin-tests");
    QApplication::setOrganizationName("tholepin-tests");
    app::dress(application, app::paletteOf("light"));
    return RUN_ALL_TESTS();
}
