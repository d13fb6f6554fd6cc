#pragma once

#include "app/gui/widgets/gear_page.h"
#include "core/base/instant.h"
#include "core/base/result.h"
#include "core/club/club.h"
#include "core/register/manifest_record.h"

#include <functional>
#include <string>

class QHBoxLayout;
class QLabel;
class QPushButton;
class QVBoxLayout;

namespace app {

class KeepQuestion;
class SideScroll;

/// What the panels of a line and of a point share: the heading, the buttons, the question before anything is
/// removed, and whose name is recorded, without which nothing is written.
class ManifestPanel : public GearPart {
    Q_OBJECT

public:
    bool isNew() const { return m_isNew; }
    /// What may not be meant so, one a line. The page puts it at its own width: beneath the fields it would
    /// take the room of a field or two. In view while the panel's fields are.
    QLabel* warningsLabel() const { return m_warnings; }
    bool isOfNoBoat() const { return m_isOfNoBoat; } ///< what is shown can only be removed

signals:
    void changed(const QString& sentence);             ///< the manifest has, and what became of it
    void said(const QString& sentence, bool toLookAt); ///< why nothing was written

protected:
    using Job = std::function<core::Outcome(core::Club&, const std::string& by, core::Moment)>;

    /// `prefix` of the object names; `remove`: the words on the button that does.
    ManifestPanel(GearTools tools, const QByteArray& prefix, const QString& remove, QWidget* parent);

    /// To be called once the fields are in fields().
    void addButtons();
    QVBoxLayout* fields() const { return m_rows; }
    const core::ManifestOwner& owner() const { return m_owner; }
    bool isOfBoat() const { return m_owner.kind == core::ManifestOwner::Kind::Boat; }

    struct Shown {
        QString heading, about;
        QString question; ///< asked before it is removed; empty: it cannot be
        bool isNew = false;
        bool isOfNoBoat = false;   ///< of a class that no boat has: without fields, only to be removed
        bool mayBeAsClass = false; ///< the boat has its own, and the class asks it too
    };
    void show(const core::ManifestOwner& owner, const Shown& shown);
    /// Whether that shall be removed from that boat or class.
    static QString questionOf(const QString& thing, const core::ManifestOwner& owner, bool hasBoat);
    static QString aboutNoBoat(); ///< why it can only be removed
    void setWritable(bool isWritable);
    void showWarnings(const QString& warnings); ///< empty: none
    bool hasWarnings() const;                   ///< some are shown
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    /// Writes by `job`, see `write`; done: emits `changed` with the sentence.
    void run(Job job, const QString& sentence);

    virtual void writeRow() = 0;
    virtual void takeAway() = 0;
    virtual void makeAsClass() = 0;

    void say(const QString& sentence, bool toLookAt = false) override; ///< by `said`

private:
    void askFirst();
    void keep();
    void showFields(bool isShown); ///< and the buttons; else the question

    core::ManifestOwner m_owner;
    QString m_questionText;
    bool m_isNew = false;
    bool m_isOfNoBoat = false;
    QLabel* m_heading;
    QLabel* m_about;
    QWidget* m_fields;
    SideScroll* m_scroll;  ///< of the fields
    QLabel* m_warnings;    ///< stands on the page
    QWidget* m_buttonRows; ///< beneath the fields, always in view
    QVBoxLayout* m_rows;
    KeepQuestion* m_question;
    QHBoxLayout* m_upper; ///< for a button that the lower row has no room for
    QHBoxLayout* m_lower;
    QPushButton* m_takeAway;
    QPushButton* m_asClass;
    QPushButton* m_write;
};

} // namespace app
