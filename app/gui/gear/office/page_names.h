#pragma once

#include <QListWidget>

namespace app {

/// The names of the pages, one beneath the other, each with the keys that go there.
class PageNames : public QListWidget {
    Q_OBJECT

public:
    enum Role { KeysRole = Qt::UserRole };

    explicit PageNames(QWidget* parent = nullptr);

    int widthOfNames() const; ///< that the widest name needs beside its keys

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
};

} // namespace app
