#pragma once

#include <QHeaderView>

namespace app {

/// A PlainTable's headings as quiet bold words over a line; in two lines where the columns need the room. Its
/// parent is the table.
class PlainHeader : public QHeaderView {
public:
    explicit PlainHeader(QWidget* parent);

    bool setWrapped(bool wrapped);                 ///< whether that makes it higher or lower
    void setSorted(int section, bool isBackwards); ///< where the mark stands; -1: nowhere
    int widthOf(int section, bool wrapped) const;  ///< pixels that its words need

protected:
    void paintSection(QPainter* painter, const QRect& rect, int section) const override;
    QSize sectionSizeFromContents(int section) const override;

private:
    bool m_isWrapped = false;
    int m_sorted = -1;
    bool m_isBackwards = false;
};

} // namespace app
