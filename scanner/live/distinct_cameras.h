#pragma once

#include <QByteArray>
#include <QString>

#include <vector>

namespace scanner {

/// One camera as the operating system lists it.
struct ListedCamera {
    QByteArray id;       ///< good only until it is pulled out
    QString description; ///< its name for people; two of a make have the same
    QByteArray kind;     ///< whatever else tells it from a camera of the same name, e.g. its formats
};

/// Keeps the list of cameras honest. Qt 6.4.2 with GStreamer lists every camera that is there at the start a
/// second time once the event loop runs, and when it is pulled out only one of the two goes. So the second is
/// matched with the first and never shown, and when either goes the camera has gone. Values in, values out.
class DistinctCameras {
public:
    /// The cameras that are there, each once, in the order of the list. The first call tells which are there
    /// at the start.
    std::vector<ListedCamera> update(const std::vector<ListedCamera>& listed);

    /// From now on a further camera of the same name is a further camera. To be called when the event loop
    /// has run for a while.
    void stopExpectingDoubles();

private:
    struct Known {
        ListedCamera camera;
        QByteArray doubleId; ///< empty: none has come
        bool expectsDouble;
    };

    void forgetGone(const std::vector<ListedCamera>& listed);
    void meet(const ListedCamera& camera);
    bool isKnown(const QByteArray& id) const;

    std::vector<Known> m_known;
    std::vector<QByteArray> m_leftovers; ///< what is left in the list of cameras that have gone
    bool m_starting = true;
    bool m_expecting = true;
};

} // namespace scanner
