#include "app/gui/gear/photos/photo_strip.h"

#include "app/gui/camera/photo_camera.h"
#include "app/gui/theme/type_scale.h"
#include "app/gui/widgets/labels.h"
#include "app/gui/widgets/picture_view.h"
#include "app/text/sentences.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/club/club_photos.h"
#include "scanner/files/small_jpeg.h"

#include <QFile>
#include <QHBoxLayout>
#include <QIcon>
#include <QPixmap>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>

namespace app {
namespace {

constexpr int thumbnailSide = 64; // pixels

QImage imageOf(const core::Club& club, const std::string& sha256) {
    const auto jpeg = club.photos().jpegOf(sha256);
    return jpeg ? QImage::fromData(QByteArray::fromStdString(*jpeg), "jpeg") : QImage();
}

QString whenOf(const core::Photo& photo, core::CalendarDay today) {
    const QString at = inWords(photo.at, today);
    return photo.by.empty() ? at : PhotoStrip::tr("%1, by %2").arg(at, text(photo.by));
}

core::Result<std::string> jpegOfFile(const QString& file) {
    const std::filesystem::path path(QFile::encodeName(file).toStdString());
    const auto jpeg = scanner::smallJpegOf(path, core::ClubPhotos::longestSide, core::ClubPhotos::mostBytes);
    if (jpeg.error) return fileErrorOf(file.toStdString(), *jpeg.error);
    return jpeg.bytes.toStdString();
}

} // namespace

PhotoStrip::PhotoStrip(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "photoStrip", parent)
    , m_row(new QWidget)
    , m_thumbnails(new QHBoxLayout(m_row))
    , m_add(wordsButton(this, tr("Add a photograph…"), "addPhotoButton"))
    , m_take(wordsButton(this, tr("Take one…"), "takePhotoButton")) {
    m_thumbnails->setContentsMargins(0, 0, 0, 0);
    m_thumbnails->setSpacing(spaceUnit);
    auto* scroll = new QScrollArea(this);
    scroll->setObjectName("photoScroll");
    scroll->setWidget(m_row);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setFocusPolicy(Qt::NoFocus);
    scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFixedHeight(thumbnailSide + 4 * spaceUnit);
    scroll->hide();
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(spaceUnit);
    layout->addWidget(scroll, 1);
    for (QPushButton* button : {m_add, m_take})
        layout->addWidget(button, 0, Qt::AlignRight | Qt::AlignVCenter);
    m_take->setAccessibleName(tr("take a photograph with the camera"));
    connect(m_add, &QPushButton::clicked, this, &PhotoStrip::add);
    connect(m_take, &QPushButton::clicked, this, &PhotoStrip::take);
}

void PhotoStrip::say(const QString& sentence, bool toLookAt) {
    emit said(sentence, toLookAt);
}

void PhotoStrip::showItem(const QString& code) {
    m_code = code.toStdString();
    m_entry.clear();
    refresh();
}

void PhotoStrip::showEntry(const QString& entry) {
    m_code.clear();
    m_entry = entry.toStdString();
    refresh();
}

void PhotoStrip::refresh() {
    read(
        [code = m_code, entry = m_entry](core::Club& club) {
            std::vector<Thumbnail> thumbnails;
            for (core::Photo& photo :
                 entry.empty() ? club.photos().ofItem(code) : club.photos().ofEntry(entry)) {
                const QImage image = imageOf(club, photo.sha256);
                thumbnails.push_back(
                    {std::move(photo), image.isNull()
                                           ? image
                                           : image.scaled(thumbnailSide, thumbnailSide, Qt::KeepAspectRatio,
                                                          Qt::SmoothTransformation)});
            }
            return thumbnails;
        },
        [this](const std::vector<Thumbnail>& thumbnails) { showThumbnails(thumbnails); });
}

void PhotoStrip::showThumbnails(const std::vector<Thumbnail>& thumbnails) {
    while (QLayoutItem* item = m_thumbnails->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Thumbnail& thumbnail : thumbnails)
        m_thumbnails->addWidget(buttonOf(thumbnail));
    m_thumbnails->addStretch(1);
    findChild<QScrollArea*>("photoScroll")->setVisible(!thumbnails.empty());
}

QWidget* PhotoStrip::buttonOf(const Thumbnail& thumbnail) {
    const QString when = whenOf(thumbnail.photo, today());
    auto* button = wordsButton(m_row, {}, "photoButton");
    if (thumbnail.image.isNull())
        button->setText(tr("damaged"));
    else
        button->setIcon(QIcon(QPixmap::fromImage(thumbnail.image)));
    button->setIconSize({thumbnailSide, thumbnailSide});
    button->setAccessibleName(tr("photograph, %1").arg(when));
    button->setToolTip(when);
    connect(button, &QPushButton::clicked, this, [this, photo = thumbnail.photo] { open(photo); });
    return button;
}

void PhotoStrip::open(const core::Photo& photo) {
    ask([hash = photo.sha256](core::Club& club) { return imageOf(club, hash); },
        [this, when = whenOf(photo, today()), id = photo.id](const QImage& image) {
            if (image.isNull())
                return emit said(tr("The photograph is not the one that was recorded."), true);
            auto* view = new PictureView(image, when, *window());
            view->offer(tr("Wrong picture: take it away"), tr("Press again to take it away"),
                        [this, id] { takeBack(id); });
        });
}

void PhotoStrip::takeBack(const std::string& id) {
    write([id](core::Club& club, const std::string& by,
               core::Moment moment) { return club.photos().takeBack({id}, by, moment); },
          [this](core::Done) {
              refresh();
              emit settled(
                  tr("The photograph is shown here no more. That it was added stays in the record."));
          });
}

void PhotoStrip::add() {
    if (!tools().choosers.pictures) return;
    const QStringList files = tools().choosers.pictures(window());
    if (files.isEmpty()) return;
    keep([files] {
        std::vector<core::Result<std::string>> jpegs;
        for (const QString& file : files)
            jpegs.push_back(jpegOfFile(file));
        return jpegs;
    });
}

void PhotoStrip::take() {
    auto* camera = new PhotoCamera(*window());
    connect(camera, &PhotoCamera::taken, this, [this](const QImage& picture) {
        keep([picture] {
            return std::vector<core::Result<std::string>>{
                scanner::smallJpegOf(picture, core::ClubPhotos::longestSide, core::ClubPhotos::mostBytes)
                    .toStdString()};
        });
    });
}

void PhotoStrip::keep(const std::function<std::vector<core::Result<std::string>>()>& read) {
    write(
        [read, code = m_code, entry = m_entry](core::Club& club, const std::string& by,
                                               core::Moment moment) -> core::Result<int> {
            int kept = 0;
            for (const core::Result<std::string>& jpeg : read()) {
                if (!jpeg) return jpeg.error();
                const auto photo = entry.empty() ? club.photos().addToItem(code, *jpeg, by, moment)
                                                 : club.photos().addToEntry(entry, *jpeg, by, moment);
                if (!photo) return photo.error();
                ++kept;
            }
            return kept;
        },
        [this](int kept) {
            refresh();
            emit settled(kept == 1 ? tr("The photograph is kept with the record.")
                                   : tr("The photographs are kept with the record."));
        });
}

} // namespace app
