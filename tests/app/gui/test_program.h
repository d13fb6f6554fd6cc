#pragma once

#include "app/gui/theme/dress.h"
#include "app/gui/theme/palette.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>

namespace support {

/// Runs the tests as a program without a display, with settings of its own: whoever runs them keeps theirs.
inline int runTests(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    QApplication::setApplicationName("tholepin-tests");
    QApplication::setOrganizationName("tholepin-tests");
    // To look at the pictures of another theme that a test keeps by hand.
    app::dress(application, app::paletteOf(qEnvironmentVariable("THOLEPIN_THEME", "light")));
    return RUN_ALL_TESTS();
}

} // namespace support
