#pragma once

#include <QBuffer>
#include <QByteArray>
#include <QObject>

#include <memory>

class QAudioSink;

namespace app {

/// What a sound tells: a short high one, or a long low one. Words on the screen always say it too.
enum class Sound { NewAndFine, LookAtThis };

/// Signed 16-bit mono samples at `soundRate`, made here: a tone that swells and fades, so that it does not
/// click.
QByteArray samplesOf(Sound sound);
inline constexpr int soundRate = 22050;

/// Plays the two sounds, where there is a device to play them; silent otherwise. GUI thread.
class Sounds : public QObject {
    Q_OBJECT

public:
    explicit Sounds(QObject* parent = nullptr);
    ~Sounds() override;

    void play(Sound sound);
    void setVolume(int percent); ///< 0 (off) to 100
    int volume() const { return m_volume; }

signals:
    void played(app::Sound sound); ///< also when nothing can be heard

private:
    bool makeSink();

    std::unique_ptr<QAudioSink> m_sink;
    QByteArray m_samples;
    QBuffer m_buffer;
    int m_volume = 70;
};

} // namespace app
