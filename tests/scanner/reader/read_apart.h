#pragma once

#include "scanner/grey_picture.h"
#include "tests/scanner/reader/reading_score.h"

#include <QJsonArray>
#include <QString>

#include <functional>
#include <vector>

namespace scored {

/// What is compared: a grey picture in, the texts in it out.
using TextReader = std::function<Texts(scanner::GreyView)>;

struct FrameOutcome {
    Texts texts;
    int height = 0;          ///< of the picture
    double milliseconds = 0; ///< of processor time
    bool aborted = false;    ///< the reader ended its process; the rest is empty
};

/// Reads the frames one after the other in a process of their own, because a decoder that ends the process is
/// to be counted, not to end the comparison. After that a new process goes on with the next frame.
std::vector<FrameOutcome> readApart(const QString& folder, const QJsonArray& frames,
                                    const TextReader& reader);

} // namespace scored
