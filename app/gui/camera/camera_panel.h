#pragma once

#include "app/gui/theme/marks.h"
#include "core/club/club_checks.h"
#include "scanner/live/live_scanner.h"

#include <QWidget>

#include <filesystem>
#include <functional>
#include <vector>

class QLabel;
class QLineEdit;
class QMenu;
class QProgressBar;
class QPushButton;

namespace app {

class CameraView;
class NetworkRow;

/// What the page knows of a code in the picture.
struct CodeWords {
    QString label;
    Mark mark = Mark::NotAsked;
};

/// The camera of any page: the live picture with outlines, which camera, mirrored or not, a video or pictures
/// instead, and the field for codes that are typed. Without a camera it says what to do.
class CameraPanel : public QWidget {
    Q_OBJECT

public:
    /// What is it there for: codes are read from it and typed beneath it, or pictures are taken.
    enum class Use { Codes, Pictures };

    explicit CameraPanel(QWidget* parent = nullptr, Use use = Use::Codes);

    /// Looks up what a scanned text stands for; called for each code in view, on each frame.
    void setDescribe(std::function<CodeWords(const core::ScannedText& scan)> describe);
    void describeAgain(); ///< what is known of the codes in view has changed

    void startCamera(); ///< the one used last, else whichever is there
    void stop();
    void readRecording(const std::vector<std::filesystem::path>& paths);
    bool isReading() const { return m_live.state() != scanner::SourceState::Stopped; }

    void setMirrored(bool mirrored);
    /// What the field for codes is called aloud, and what stands in it while it is empty.
    void askFor(const QString& aloud, const QString& shown);
    void say(const QString& sentence, bool toLookAt = false); ///< what the last scan came to
    void forgetError(); ///< says nothing any more, if it was something to look at
    QLineEdit& codeEdit() { return *m_codeEdit; }
    CameraView& view() { return *m_view; }

signals:
    void codeSeen(const core::ScannedText& scan, core::SeenBy seenBy);
    /// The page asks which, and calls readRecording.
    void picturesPressed();
    void pictureFolderPressed();
    void mirroredChanged(bool mirrored);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void buildControls();
    void fillMenu();
    void chooseCamera(const scanner::CameraChoice& camera);
    void watchNetwork(const scanner::NetworkAddress& address);
    void showState(scanner::SourceState state);
    void takeOutlines(const std::vector<scanner::TrackedCode>& codes, QSize frame);
    void showAdvice(scanner::PictureAdvice advice);
    void showFailure(const QString& path, const scanner::FileError& error);

    scanner::LiveScanner m_live;
    std::function<CodeWords(const core::ScannedText&)> m_describe;
    Use m_use;
    bool m_isRecording = false;
    bool m_isNetwork = false; ///< the camera that is watched is one of the network
    std::vector<scanner::TrackedCode> m_inView;
    QSize m_frame;
    CameraView* m_view;
    QMenu* m_menu;
    QPushButton* m_cameraButton;
    QProgressBar* m_progress;
    NetworkRow* m_network;
    QLabel* m_said;
    QLineEdit* m_codeEdit;
};

} // namespace app
