#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/club/club_checks.h"

class QLayout;

namespace app {

class CameraPanel;

/// A page that is worked by showing tags to the camera, or typing their codes: the picture stands at the
/// left, and what is said of a code beneath it. The camera runs while the page is shown, if it is wanted.
class CameraPage : public GearPage {
    Q_OBJECT

public:
    CameraPanel& camera() { return *m_camera; }
    bool takeScan(const QString& text, core::SeenBy how) override;
    void sayOfScan(const QString& sentence) override { say(sentence, true); }

protected:
    CameraPage(GearTools tools, const QString& name, QWidget* parent);

    /// `aboveCamera` over the picture, `right` beside both, the caution at the foot.
    void layOut(QLayout* aboveCamera, QLayout* right, const char* cautionName, const QString& caution);
    /// A code as it was shown or typed.
    virtual void scan(const core::ScannedText& seen, core::SeenBy seenBy) = 0;
    void say(const QString& sentence, bool toLookAt = false) override; ///< under the picture
    void forgetError() override;

    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    CameraPanel* m_camera;
};

} // namespace app
