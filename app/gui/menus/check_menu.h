#pragma once

#include <QMenu>

class QActionGroup;

namespace core {
enum class Phase;
}

namespace app {

class CheckPage;

/// What is done in a check, and how one is begun from the board.
class CheckMenu : public QMenu {
    Q_OBJECT

public:
    explicit CheckMenu(CheckPage& page, QWidget* parent = nullptr);

    void setInCheck(bool inCheck); ///< most of it can be done in a check alone

signals:
    void startWanted(core::Phase phase); ///< of the boat that the board or the check stands on

    void paperWanted(bool card); ///< a check list to tick by hand, or the card for the wall, of that boat

private:
    template <class Does>
    void addOfCheck(const QString& text, const QKeySequence& keys, Does does);

    CheckPage& m_page;
    QActionGroup* m_ofCheck;
};

} // namespace app
