#pragma once

#include "app/gui/theme/marks.h"

#include <QImage>
#include <QPolygonF>
#include <QString>
#include <QWidget>

#include <vector>

namespace app {

/// A tag in the picture: its corners as shares of the picture (0 to 1), what it is, and its mark.
struct TagOutline {
    QPolygonF corners;
    QString label; ///< may be empty
    Mark mark = Mark::NotAsked;
};

/// The live picture with an outline around each tag that is read. Without a picture it says why in words.
class CameraView : public QWidget {
    Q_OBJECT

public:
    explicit CameraView(QWidget* parent = nullptr);

    void setPicture(const QImage& picture);
    void setOutlines(std::vector<TagOutline> outlines);
    void setMirrored(bool mirrored);
    bool isMirrored() const { return m_mirrored; }
    /// Shown instead of a picture: what is the matter, and what to do.
    void setMessage(const QString& title, const QString& text);
    /// A line at the foot of the picture: what would help the camera. Empty: none.
    void setAdvice(const QString& advice);
    const QString& advice() const { return m_advice; }
    void clearPicture();
    bool hasPicture() const { return !m_picture.isNull(); }
    const QImage& picture() const { return m_picture; } ///< as the camera sees it, mirrored or not

    QSize sizeHint() const override;
    bool hasHeightForWidth() const override { return true; }
    int heightForWidth(int width) const override { return width * 9 / 16; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    QRectF pictureRect() const;
    void paintMessage(QPainter& painter) const;
    void paintAdvice(QPainter& painter) const;
    int adviceHeight() const; ///< 0 without advice
    QPolygonF cornersOf(const TagOutline& outline, const QRectF& picture) const;
    void paintOutlines(QPainter& painter, const QRectF& picture) const;

    QImage m_picture;
    std::vector<TagOutline> m_outlines;
    bool m_mirrored = false;
    QString m_title;
    QString m_text;
    QString m_advice;
};

} // namespace app
