#pragma once

#include <gtest/gtest.h>

#include <QProcess>
#include <QStringList>

namespace support {

/// What poppler's tools, which share no code with the writer, read in a PDF.
inline QString outputOf(const QString& program, const QStringList& arguments) {
    QProcess process;
    process.start(program, arguments);
    EXPECT_TRUE(process.waitForFinished(20000)) << program.toStdString();
    return QString::fromUtf8(process.readAllStandardOutput());
}

} // namespace support
