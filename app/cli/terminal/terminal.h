#pragma once

#include "core/base/result.h"

#include <QString>
#include <QStringList>

#include <memory>
#include <string>
#include <vector>

class QGuiApplication;

namespace app {

/// Exit codes of the contract.
enum Exit { ExitFine = 0, ExitNeedsSomebody = 1, ExitBadInput = 2, ExitFailed = 3 };

/// Writes to standard output as it is. What cannot be written (a full disk behind a redirection) is told by
/// finishOutput.
void say(const std::string& text);

/// From now on nothing that is said gets there (--quiet); errors go on to standard error.
void sayNothing();

/// Text for a person. Nothing in it drives the terminal: see app/text/text.h.
void sayText(const QString& text);
void sayLine(const QString& line);

/// Rows in columns, left-aligned, two blanks between, indented by two; for a terminal with a fixed-width
/// font. Without rows the text is empty, without its heading too.
QString tableOf(const QStringList& heading, const std::vector<QStringList>& rows);

/// What was said so far is out, whatever happens to the program next.
void flushOutput();

/// Flushes; turns an exit code into ExitFailed, with an error line, when standard output could not take
/// everything.
/// From now on an answer that cannot be written is told as that of something recorded.
void noteRecorded();
/// The same of a new file. A closed pipe is a failed write from then on.
void noteMade();
int finishOutput(int exit);

/// Where lines for people go: standard error, also while LibrariesQuiet holds it shut. A file descriptor.
int errorChannel();

/// While it lives, what libraries write to standard error by themselves reaches nobody. libpng, libtiff and
/// the decoders that GStreamer loads write there, whatever Qt is told, and their loaders (Qt, GStreamer) give
/// no way to their own handlers: so the descriptor itself is turned away. One at a time.
class LibrariesQuiet {
public:
    LibrariesQuiet();
    ~LibrariesQuiet();
    LibrariesQuiet(const LibrariesQuiet&) = delete;
    LibrariesQuiet& operator=(const LibrariesQuiet&) = delete;
};

/// One line on standard error, `tholepinctl: …`.
void note(const QString& line);

/// The error as one line, and its exit code: bad input, or a file or device that failed.
int fail(const core::Error& error);
int failWith(const std::string& what, const std::string& where, const std::string& mend);

/// `file:row:column`, as far as they are known: row 0 and an empty column are left out.
std::string placeIn(const std::string& file, int row, const std::string& column);

/// What Qt's painting needs, without a display, while it lives. Only for commands that paint: it takes its
/// time. Throws std::bad_alloc before the fonts are read, where there is not the memory for them.
class Painting {
public:
    Painting();
    ~Painting();
    Painting(const Painting&) = delete;
    Painting& operator=(const Painting&) = delete;

private:
    std::unique_ptr<QGuiApplication> m_application;
};

} // namespace app
