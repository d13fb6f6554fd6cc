#include "app/gui/gear/photos/photo_strip.h"

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

core::Result<core::Photo> keep(core::Club& club, const QString& file, const std::string& code,
                               const std::string& entry, const std::string& by, core::Moment moment) {
    const std::filesystem::path path(QFile::encodeName(file).toStdString());
    const auto jpeg = scanner::smallJpegOf(path, core::ClubPhotos::longestSide, core::ClubPhotos::mostBytes);
    if (jpeg.error) return fileErrorOf(file.toStdString(), *jpeg.error);
    return entry.empty() ? club.photos().addToItem(code, jpeg.bytes.toStdString(), by, moment)
                         : club.photos().addToEntry(entry, jpeg.bytes.toStdString(), by, moment);
}

} // namespace

PhotoStrip::PhotoStrip(GearTools given, QWidget* parent)
    : GearPart(std::move(given), "photoStrip", parent)
    , m_row(new QWidget)
    , m_thumbnails(new QHBoxLayout(m_row))
    , m_add(wordsButton(this, tr("Add a photograph…"), "addPhotoButton")) {
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
    layout->addWidget(m_add, 0, Qt::AlignRight | Qt::AlignVCenter);
    connect(m_add, &QPushButton::clicked, this, &PhotoStrip::add);
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
        [this](const std::vector<Thumbnail>& thumbnails) { take(thumbnails); });
}

void PhotoStrip::take(const std::vector<Thumbnail>& thumbnails) {
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
        [this, when = whenOf(photo, today())](const QImage& image) {
            if (image.isNull())
                return emit said(tr("The photograph is not the one that was recorded."), true);
            new PictureView(image, when, *window());
        });
}

void PhotoStrip::add() {
    if (!tools().choosers.pictures) return;
    const QStringList files = tools().choosers.pictures(window());
    if (files.isEmpty()) return;
    write(
        [files, code = m_code, entry = m_entry](core::Club& club, const std::string& by,
                                                core::Moment moment) -> core::Result<int> {
            int kept = 0;
            for (const QString& file : files) {
                const auto photo = keep(club, file, code, entry, by, moment);
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
