#pragma once

#include "scanner/grey_picture.h"

#include <chrono>
#include <memory>
#include <optional>
#include <utility>

class QCamera;

namespace scanner {

/// What can be asked of a camera so that its picture gets lighter; as far as the camera takes it.
class LightControls {
public:
    virtual ~LightControls() = default;
    virtual bool takesNightMode() const = 0;
    virtual bool takesCompensation() const = 0;
    /// Seconds; empty: it does not say, or takes none.
    virtual std::optional<double> longestExposure() const = 0;
    virtual std::optional<int> highestIso() const = 0;

    virtual void setNightMode(bool isNight) = 0;
    virtual void setCompensation(double stops) = 0;        ///< 0: none
    virtual void setExposure(std::optional<double> s) = 0; ///< empty: the camera's own choice
    virtual void setIso(std::optional<int> iso) = 0;       ///< likewise
};

/// The controls of Qt's camera, which must outlive them. Many webcams have none by Qt's means.
std::unique_ptr<LightControls> lightControlsOf(QCamera& camera);

/// Asks a camera for more light while its picture is too dark, step by step: its night mode, one stop more,
/// two, then the highest gain with an exposure that still bears a hand. What was asked is taken back when the
/// picture gets very light. No clock, no thread: told of frames with their times, which never fall.
class CameraLight {
public:
    explicit CameraLight(std::unique_ptr<LightControls> controls)
        : m_controls(std::move(controls)) {}

    /// One frame; looks at some of its pixels five times a second.
    void look(GreyView frame, std::chrono::milliseconds at);
    bool isAsking() const { return m_asked > 0; }

private:
    enum class Step { NightMode, OneStop, TwoStops, Gain, End };

    void askForMore();
    bool take(Step step);
    void takeBack();

    std::unique_ptr<LightControls> m_controls;
    int m_asked = 0; ///< steps that were gone through
    std::optional<std::chrono::milliseconds> m_darkSince, m_lightSince, m_looked;
};

} // namespace scanner
