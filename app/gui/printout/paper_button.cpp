#include "app/gui/printout/paper_button.h"

#include "app/paper/check_list/check_list.h"
#include "app/text/text.h"

#include <QCoreApplication>
#include <QMenu>

namespace app {
namespace {

struct PaperButtonText {
    Q_DECLARE_TR_FUNCTIONS(PaperButton)
};

using Paint = bool (*)(QPagedPaintDevice&, const CheckList&, int*);

PaperDelivery::ReadPaper paperOf(const QString& boat, core::CalendarDay today, const QString& name,
                                 Paint paint) {
    return [boat = boat.toStdString(), today, name, paint](core::Club& club) -> core::Result<Printable> {
        const auto list = readCheckList(club, boat, today);
        if (!list) return list.error();
        const QString file =
            QStringLiteral("%1 %2").arg(name, text(list->name)).replace(QLatin1Char('/'), QLatin1Char('-'));
        return Printable{
            file, [list = *list, paint](QPagedPaintDevice& device) { return paint(device, list, nullptr); }};
    };
}

} // namespace

PaperDelivery::ReadPaper checkListPaper(const QString& boat, core::CalendarDay today) {
    return paperOf(boat, today, PaperButtonText::tr("Check list"), paintCheckList);
}

PaperDelivery::ReadPaper wallCardPaper(const QString& boat, core::CalendarDay today) {
    return paperOf(boat, today, PaperButtonText::tr("Wall card"), paintWallCard);
}

PaperButton::PaperButton(ClubThread& club, Choosers choosers, TimeSource time, QWidget* parent)
    : QPushButton(tr("Print or save…"), parent)
    , m_delivery(new PaperDelivery(club, std::move(choosers), this))
    , m_time(std::move(time))
    , m_menu(new QMenu(this)) {
    setObjectName("paperButton");
    m_menu->setObjectName("paperMenu");
    connect(this, &QPushButton::clicked, this, &PaperButton::showMenu);
    connect(m_delivery, &PaperDelivery::done, this, &PaperButton::done);
}

PaperDelivery::ReadList PaperButton::prepared(const ListRead& read) const {
    return [read, today = m_time().today](core::Club& club) { return read(club, today); };
}

PaperDelivery::ReadList PaperButton::prepared(const ListShown& shown) const {
    ListTable table = shown();
    table.day = m_time().today;
    return [table](core::Club& club) -> core::Result<ListTable> {
        ListTable whole = table;
        whole.club = app::text(club.name());
        return whole;
    };
}

void PaperButton::offerList(const ListRead& read) {
    addList([this, read] { return prepared(read); });
}

void PaperButton::offerShown(const ListShown& shown) {
    addList([this, shown] { return prepared(shown); });
}

void PaperButton::offerShown(const ListShown& shown, const std::function<ListRead()>& instead) {
    addList([this, shown, instead] {
        const ListRead read = instead();
        return read ? prepared(read) : prepared(shown);
    });
}

void PaperButton::addList(const Prepare& prepare) {
    m_menu->addAction(tr("&Print this list…"), this,
                      [this, prepare] { m_delivery->print(PaperDelivery::paperOf(prepare())); });
    m_menu->addAction(tr("Save as P&DF…"), this,
                      [this, prepare] { m_delivery->savePdf(PaperDelivery::paperOf(prepare())); });
    m_menu->addAction(tr("Save as &CSV…"), this, [this, prepare] { m_delivery->saveCsv(prepare()); });
    m_menu->addAction(tr("Copy as &text"), this, [this, prepare] { m_delivery->copy(prepare()); });
}

void PaperButton::addCheckLists(QMenu& menu, const std::function<QString()>& boat) {
    const auto add = [&](const QString& words, auto paper, auto take) {
        menu.addAction(words, this, [this, boat, paper, take] {
            if (const QString name = boat(); !name.isEmpty())
                (m_delivery->*take)(paper(name, m_time().today));
        });
    };
    add(tr("Print a check &list…"), checkListPaper, &PaperDelivery::print);
    add(tr("Save a check list as PDF…"), checkListPaper, &PaperDelivery::savePdf);
    add(tr("Print the &wall card…"), wallCardPaper, &PaperDelivery::print);
    add(tr("Save the wall card as PDF…"), wallCardPaper, &PaperDelivery::savePdf);
}

void PaperButton::offerCheckList(const std::function<QString()>& boat) {
    addCheckLists(*m_menu, boat);
}

void PaperButton::offerCheckLists(const std::function<QStringList()>& boats) {
    QMenu* all = m_menu->addMenu(tr("Paper check list and wall card of"));
    connect(m_menu, &QMenu::aboutToShow, all, [this, all, boats] {
        all->clear();
        for (const QString& boat : boats()) {
            // An & in a name is no key.
            QMenu* of = all->addMenu(QString(boat).replace(QLatin1Char('&'), QLatin1String("&&")));
            addCheckLists(*of, [boat] { return boat; });
        }
        all->menuAction()->setEnabled(!all->isEmpty());
    });
}

void PaperButton::showMenu() {
    m_menu->popup(mapToGlobal(rect().bottomLeft()));
}

} // namespace app
