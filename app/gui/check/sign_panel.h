#pragma once

#include "app/gui/widgets/second_press.h"

#include <QStringList>
#include <QWidget>

class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QVBoxLayout;

namespace core {
struct CheckAnswer;
}

namespace app {

struct CheckState;
class Drafts;

/// Who stands by the check: the cautions, the person, for a launch with short kit the reason, and the
/// signature. The button, its key and the tag for finishing press the same signature.
class SignPanel : public QWidget {
    Q_OBJECT

public:
    enum class Press { Signed, AskedOnceMore, Wanting };

    explicit SignPanel(QWidget* parent = nullptr);

    /// Takes the keyboard to what is wanted next. What was written and chosen before stays.
    void begin(const CheckState& state);
    /// Proposes the driver as signer, until somebody chose otherwise: that stays.
    void setState(const CheckState& state);
    /// Where the reason is kept while it is half written.
    void openDrafts(const QString& place);
    void clear(); ///< for the next check
    /// Somebody of the club signs instead of who was proposed. False: nobody is called that.
    bool nameSigner(const QString& person);
    /// Presses the signature. Who would go afloat without a life jacket makes it ask once more first.
    Press press();
    /// Why the next press signs in spite of; empty where nothing has to be asked.
    QString onceMore() const;

signals:
    void signPressed(const QString& by, const QString& urgent);
    void backPressed();

private:
    void build();
    void addSigner(QVBoxLayout& layout);
    void connectParts();
    void offerSigners(const QStringList& aboard, const QStringList& all);
    void adapt();

    bool m_needsReason = false;
    bool m_isSignerChosen = false;
    QString m_usualWords; ///< of the signature
    QStringList m_people;
    QStringList m_withoutJacket;
    SecondPress m_second;
    QLabel* m_heading;
    QLabel* m_caution;
    QComboBox* m_by;
    QLabel* m_reasonLabel;
    QLineEdit* m_reason;
    Drafts* m_drafts;
    QLabel* m_wanting; ///< what is wanting of the reason
    QLabel* m_jackets;
    QPushButton* m_sign;
};

} // namespace app
