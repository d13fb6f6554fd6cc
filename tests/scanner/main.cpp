#include <QGuiApplication>
#include <gtest/gtest.h>

// Workers and cameras speak by queued signals, so an application object must be there.
int main(int argc, char** argv) {
    QGuiApplication application(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
