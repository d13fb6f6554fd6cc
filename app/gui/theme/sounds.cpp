#include "app/gui/theme/sounds.h"

#include <QAudioDevice>
#include <QAudioFormat>
#include <QAudioSink>
#include <QMediaDevices>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace app {

QByteArray samplesOf(Sound sound) {
    const bool fine = sound == Sound::NewAndFine;
    const double seconds = fine ? 0.09 : 0.45;
    const double hertz = fine ? 1320.0 : 330.0;
    const int count = static_cast<int>(seconds * soundRate);
    QByteArray bytes(count * 2, Qt::Uninitialized);
    auto* sample = reinterpret_cast<std::int16_t*>(bytes.data());
    for (int i = 0; i < count; ++i) {
        const double along = static_cast<double>(i) / count;
        const double swell = std::min({1.0, along * 12, (1 - along) * 6});
        const double phase = 2 * std::numbers::pi * hertz * i / soundRate;
        // A fifth of the octave above makes the low one audible on a laptop's small speaker.
        const double wave = 0.8 * std::sin(phase) + 0.2 * std::sin(2 * phase);
        sample[i] = static_cast<std::int16_t>(26000 * swell * wave);
    }
    return bytes;
}

Sounds::Sounds(QObject* parent)
    : QObject(parent) {}

Sounds::~Sounds() = default;

bool Sounds::makeSink() {
    const QAudioDevice device = QMediaDevices::defaultAudioOutput();
    if (device.isNull()) return false;
    QAudioFormat format;
    format.setSampleRate(soundRate);
    format.setChannelCount(1);
    format.setSampleFormat(QAudioFormat::Int16);
    if (!device.isFormatSupported(format)) return false;
    m_sink = std::make_unique<QAudioSink>(device, format);
    return true;
}

void Sounds::play(Sound sound) {
    emit played(sound);
    if (m_volume == 0 || (!m_sink && !makeSink())) return;
    m_sink->stop();
    m_buffer.close();
    m_samples = samplesOf(sound);
    m_buffer.setBuffer(&m_samples);
    m_buffer.open(QIODevice::ReadOnly);
    m_sink->setVolume(m_volume / 100.0);
    m_sink->start(&m_buffer);
}

void Sounds::setVolume(int percent) {
    m_volume = std::clamp(percent, 0, 100);
}

} // namespace app
