#pragma once

#include <QStringList>
#include <QWidget>

class QComboBox;
class QHBoxLayout;

namespace app {

/// Who is aboard: the driver and the crew, one box for each person and one more for the next.
class PeopleBar : public QWidget {
    Q_OBJECT

public:
    explicit PeopleBar(QWidget* parent = nullptr);

    void setPeople(const QStringList& all, const QStringList& aboard);
    QStringList aboard() const;
    void openDriver(); ///< puts the keyboard on the driver's box

signals:
    void namesChosen(const QStringList& aboard);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void addBox();
    void fill(QComboBox& box, const QString& chosen) const;

    QStringList m_all;
    QStringList m_aboard;
    QList<QComboBox*> m_boxes;
    QHBoxLayout* m_layout;
};

} // namespace app
