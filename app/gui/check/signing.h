#pragma once

#include "app/gui/check/sign_panel.h"
#include "app/gui/club/check_session.h"
#include "app/gui/printout/check_printout.h"
#include "app/gui/widgets/part_stack.h"

namespace app {

class SignedPanel;

/// The end of a check: first who signs, then what was signed and its printout.
class Signing : public PartStack {
    Q_OBJECT

public:
    explicit Signing(QWidget* parent = nullptr);

    void begin(const CheckState& state);
    void openDrafts(const QString& place);  ///< see Drafts
    void setState(const CheckState& state); ///< the check has changed meanwhile
    bool nameSigner(const QString& person); ///< false: nobody of that name can sign
    SignPanel::Press press();
    QString onceMore() const; ///< see SignPanel
    void showSigned(const core::SignedCheck& check, const CheckState& state);
    void printoutDone(const QString& sentence);
    void clear(); ///< for the next check

    bool isSigned() const { return m_isSigned; }
    bool isAsking() const; ///< it is on the screen and waits for the signature

signals:
    void backPressed();
    void signPressed(const QString& by, const QString& urgent);
    void printPressed(const app::CheckPrintout& printout);
    void savePressed(const app::CheckPrintout& printout);
    void donePressed();

private:
    bool m_isSigned = false;
    CheckPrintout m_printout;
    SignPanel* m_sign;
    SignedPanel* m_signedPanel;
};

} // namespace app
