#pragma once

#include <QString>
#include <QStringList>
#include <QWidget>

#include <functional>
#include <vector>

class QAction;
class QKeySequence;
class QLabel;
class QListWidget;
class QStackedWidget;

namespace app {

class ChoiceBox;

/// The gear officer's pages: their names at the left, the chosen one beside them, and who is at work. A page
/// is made when it is first shown; it reads what it shows whenever it is shown (its `showEvent`).
class GearOffice : public QWidget {
    Q_OBJECT

public:
    using Make = std::function<QWidget*(QWidget* parent)>;

    explicit GearOffice(QWidget* parent = nullptr);

    /// `id` names the page in the program, `name` on the screen, with its letter in a menu after an `&`;
    /// `keys` go there while the window has the keyboard.
    void addPage(const QString& id, const QString& name, const QKeySequence& keys, Make make);
    /// One action for each page, in their order, for a menu.
    QList<QAction*> pageActions() const;

    void showPage(const QString& id);
    QString currentPage() const;            ///< its id; empty while none was shown
    QWidget* page(const QString& id) const; ///< null while it was never shown

    /// Whoever may be at work, those whose role it is first. The choice is kept where it is still offered;
    /// one person alone in that role is taken as chosen.
    void setPeople(const QStringList& officers, const QStringList& others);
    QString officer() const; ///< empty: nobody was chosen yet
    bool hasPeople() const;  ///< there is a name to choose
    void setOfficer(const QString& name);

signals:
    void pageWanted(const QString& id); ///< by its keys or its name; it is shown already
    void boardWanted();                 ///< some page leads to the boats
    void pageShown();                   ///< the current page is another one
    void peopleWanted();                ///< a page is about to be shown: who is in the club now?

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct Page {
        QString id;
        Make make;
        QAction* action = nullptr;
        QWidget* widget = nullptr;
        QWidget* place = nullptr; ///< scrolls it
    };

    int indexOf(const QString& id) const;
    void build();

    std::vector<Page> m_pages;
    QListWidget* m_names;
    QLabel* m_officerLabel;
    ChoiceBox* m_officer;
    QStackedWidget* m_stack;
};

} // namespace app
