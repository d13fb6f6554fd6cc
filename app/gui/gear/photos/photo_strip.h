#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/register/photo.h"

#include <QImage>

#include <array>
#include <functional>
#include <string>
#include <vector>

class QHBoxLayout;
class QPushButton;

namespace app {

/// The photographs of an item or of a log entry, small; pressed, one is shown as large as the window. Another
/// is added from a file or taken with the camera.
class PhotoStrip : public GearPart {
    Q_OBJECT

public:
    explicit PhotoStrip(GearTools tools, QWidget* parent = nullptr);

    void showItem(const QString& code);   ///< and those of the log entries about it
    void showEntry(const QString& entry); ///< its id
    /// "Add a photograph…" and "Take one…", for a page that has a better place for them than beside the
    /// photographs.
    std::array<QPushButton*, 2> addButtons() const { return {m_add, m_take}; }

signals:
    void settled(const QString& sentence);             ///< one was added
    void said(const QString& sentence, bool toLookAt); ///< or what kept it

protected:
    void say(const QString& sentence, bool toLookAt) override;

private:
    /// One that is there, small.
    struct Thumbnail {
        core::Photo photo;
        QImage image; ///< null: its bytes are not what was recorded
    };

    void refresh();
    void showThumbnails(const std::vector<Thumbnail>& thumbnails);
    QWidget* buttonOf(const Thumbnail& thumbnail);
    void open(const core::Photo& photo);
    void takeBack(const std::string& id); ///< it is of something else
    void add();
    void take();
    /// Keeps them with the item or entry; each is a JPEG, or why it is none. On the club's thread.
    void keep(const std::function<std::vector<core::Result<std::string>>()>& read);

    std::string m_code;
    std::string m_entry; ///< empty: of the item
    QWidget* m_row;
    QHBoxLayout* m_thumbnails;
    QPushButton* m_add;
    QPushButton* m_take;
};

} // namespace app
