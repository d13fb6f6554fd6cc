#pragma once

// First, because moc of Qt 6.4 stumbles when <compare> is the first thing it reads.
#include <QWidget>

#include "app/gui/camera/scan_taker.h"
#include "app/gui/choosers.h"
#include "app/gui/club/club_thread.h"
#include "core/base/instant.h"
#include "core/base/result.h"

#include <functional>
#include <memory>
#include <string>
#include <utility>

class QVBoxLayout;

namespace core {
enum class SheetId;
}

namespace app {

class HubWatch;
class PaperButton;
class SaidLabel;
class Sounds;
struct ListTable;

/// What a page of the gear officer's works with. The club and the sounds outlive every page.
struct GearTools {
    ClubThread& club;
    TimeSource time;
    Sounds& sounds;
    Choosers choosers;
    std::function<bool()> isCameraWanted;           ///< whether a page may start the camera by itself
    std::function<QString()> officer{};             ///< who is at work; empty: nobody was chosen yet
    std::function<void(const QString&)> showItem{}; ///< goes to that item's page
    std::function<void(const QString&)> showPage{}; ///< goes to the page of that id
    /// Goes to these rows of the page Register, and to that row of them (see keyOfRow); empty: none.
    std::function<void(core::SheetId, const QString& row)> showSheet{};
    std::function<void(const QString&)> showHistory{}; ///< goes to all that is recorded of that name or tag
    std::function<void()> showBoard{};                 ///< goes to the boats
    std::function<bool()> hasPeople{};                 ///< whether anybody's name could be chosen; empty: yes
    std::function<void()> readPeople{};                ///< after a change: who can be chosen is read anew
    /// Asks for a gear officer's PIN, in the window; then runs the first, or the second where none is given;
    /// neither when `asker` is gone by then.
    std::function<void(QObject* asker, std::function<void()> goOn, std::function<void()> giveUp)> askForPin{};
    std::function<void()> pinChanged{}; ///< somebody's PIN was set or taken away
    std::function<void()> clubNamed{};  ///< the club has another name
    HubWatch* hub = nullptr;            ///< null: nothing is exchanged with a server
};

/// A page of the gear officer's, or a panel on one: it asks the club's thread, shows what that answers, and
/// says in its place what became of what was done. GUI thread; answers come there, and none after its end.
class GearPart : public QWidget {
    Q_OBJECT

signals:
    void shown(); ///< what was read is shown

protected:
    GearPart(GearTools tools, const QString& name, QWidget* parent);

    const GearTools& tools() const { return m_tools; }
    core::CalendarDay today() const { return m_tools.time().today; }

    /// Runs `job(club)` on the club's thread, then `then(answer)` here.
    template <class Job, class Then>
    void ask(Job job, Then then) {
        m_tools.club.ask(this, std::move(job), std::move(then));
    }
    /// The same for what is shown: of several questions on their way the newest alone is answered, so that
    /// nothing old stands where something newer was asked for. Emits `shown` when `then` is done.
    template <class Job, class Then>
    void read(Job job, Then then) {
        ask(std::move(job), [this, question = ++m_question, then = std::move(then)](auto answer) mutable {
            if (question != m_question) return;
            then(std::move(answer));
            emit shown();
        });
    }
    /// `ask` of an act that may be a gear officer's: where it needs a PIN, that is asked for in the window,
    /// and then the job is run anew. `job` gives an outcome or a result.
    template <class Job, class Then>
    void doAct(Job job, Then then) {
        tryAct(std::move(job), std::make_shared<Then>(std::move(then)));
    }
    /// Runs `job(club, by, moment)` on the club's thread under the name of whoever is at work; it gives an
    /// outcome or a result. Done: `then` is given the value. Else the error is said. Nothing is done, and
    /// that is said, while nobody is named.
    template <class Job, class Then>
    void write(Job job, Then then) {
        const std::string by = officer();
        if (by.empty()) return;
        doAct([job = std::move(job), by,
               moment = m_tools.time()](core::Club& club) { return job(club, by, moment); },
              [this, then = std::move(then)](const auto& done) mutable {
                  if (done)
                      then(*done);
                  else
                      sayError(done.error());
              });
    }

    /// Who is at work; when nobody is named it is empty, and that is said.
    std::string officer();
    /// In the part's own label, see `saidLabel`, unless it has another place for it.
    virtual void say(const QString& sentence, bool toLookAt = false);
    virtual void forgetError(); ///< what did not work is done now
    void sayError(const core::Error& error);
    void sayDone(const core::Result<QString>& sentence); ///< or the error in its place
    /// The label of what is said, a child of this; made by the first call, to be put into the layout.
    SaidLabel* saidLabel(const char* name);
    bool hasSaidLabel() const { return m_said; }

private:
    template <class Job, class Then>
    void tryAct(Job job, std::shared_ptr<Then> then) {
        ask(job, [this, job, then](auto answer) {
            auto done = std::make_shared<decltype(answer)>(std::move(answer));
            const bool isAsked =
                !*done && asksForPin((*done).error(), [this, job, then] { tryAct(job, then); },
                                     [then, done] { (*then)(std::move(*done)); });
            if (!isAsked && *done) forgetError();
            if (!isAsked) (*then)(std::move(*done));
        });
    }
    /// False: it is another error, or nobody can be asked.
    bool asksForPin(const core::Error& error, std::function<void()> goOn, std::function<void()> giveUp);

    GearTools m_tools;
    SaidLabel* m_said = nullptr;
    int m_question = 0; ///< counts what was asked by `read`
};

/// One of the pages: reads what it shows whenever it is shown.
class GearPage : public GearPart, public ScanTaker {
    Q_OBJECT

public:
    /// Reads anew what the page shows.
    virtual void refresh() = 0;
    void sayOfScan(const QString& sentence) override;

protected:
    using GearPart::GearPart;

    /// A button by which a list is printed, saved or copied, see PaperButton: what `read` gives on the club's
    /// thread, or what is shown. What becomes of it is said on the page.
    PaperButton*
    listButton(const std::function<core::Result<ListTable>(core::Club&, core::CalendarDay)>& read);
    PaperButton* shownListButton(const std::function<ListTable()>& shown);
    PaperButton* paperButton(); ///< that offers nothing yet

    /// A page that has no place for what it says gets one at its foot.
    void say(const QString& sentence, bool toLookAt = false) override;

    /// The page's parts one beneath the other, as far from its edges as on every page; `above`: pixels.
    QVBoxLayout& column(int above);
    /// What the page warns of, at its foot, in small type.
    void addCaution(QVBoxLayout& column, const char* name, const QString& caution);

    void showEvent(QShowEvent* event) override;
};

} // namespace app
