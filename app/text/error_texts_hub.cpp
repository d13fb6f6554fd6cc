#include "app/text/error_texts.h"

#include <QtGlobal>

namespace app {
namespace {

using core::ErrorCode;

// The hub of a district.
constexpr ErrorText textsOfHub[] = {
    {ErrorCode::HubUrlUnreadable, QT_TRANSLATE_NOOP("Errors", "the hub's URL is none that PostgreSQL knows"),
     QT_TRANSLATE_NOOP(
         "Errors", "write it like postgresql://club@db.example.org/tholepin (PostgreSQL, Connection URIs)")},
    {ErrorCode::HubUrlWithPassword,
     QT_TRANSLATE_NOOP(
         "Errors", "the hub's URL holds a password, which would stand in the list of programs and be kept"),
     QT_TRANSLATE_NOOP("Errors", "put the password into ~/.pgpass (a line host:port:database:user:password, "
                                 "mode 0600), and take it out of the URL")},
    {ErrorCode::HubNotReached,
     QT_TRANSLATE_NOOP("Errors", "the hub was not reached, so nothing was taken in: %1"),
     QT_TRANSLATE_NOOP("Errors", "work goes on without it; look whether this computer is online, whether the "
                                 "URL is right, and whether ~/.pgpass has the password")},
    {ErrorCode::HubNotPrepared,
     QT_TRANSLATE_NOOP("Errors", "this database is no hub, or one of an older program"),
     QT_TRANSLATE_NOOP("Errors", "whoever administers it gives `tholepinctl hub prepare URL`")},
    {ErrorCode::HubNotAllowed,
     QT_TRANSLATE_NOOP("Errors", "the hub does not allow that to the role of the URL: %1"),
     QT_TRANSLATE_NOOP("Errors", "use the URL with the role that may: the club's for a club, the district's "
                                 "for `hub boats`, the administrator's for `hub prepare` and `hub add`")},
    {ErrorCode::HubRefused, QT_TRANSLATE_NOOP("Errors", "the hub could not do that: %1"),
     QT_TRANSLATE_NOOP("Errors", "tell whoever administers the database")},
    {ErrorCode::HubAhead, QT_TRANSLATE_NOOP("Errors", "another machine sent something at the same moment"),
     QT_TRANSLATE_NOOP("Errors", "exchange again")},
    {ErrorCode::HubNotJoined, QT_TRANSLATE_NOOP("Errors", "this file exchanges with no hub"),
     QT_TRANSLATE_NOOP("Errors", "give `tholepinctl hub join FILE URL` first")},
    {ErrorCode::HubPlaceNotKept,
     QT_TRANSLATE_NOOP("Errors", "where the file exchanges cannot be kept in this user's state folder"),
     QT_TRANSLATE_NOOP("Errors", "the folder must be the user's own (mode 0700), and THOLEPIN_STATE, "
                                 "XDG_STATE_HOME or HOME must say where it is")},
    {ErrorCode::HubRoleUnknown, QT_TRANSLATE_NOOP("Errors", "no club of the hub connects as '%1'"),
     QT_TRANSLATE_NOOP(
         "Errors",
         "whoever administers the database gives `tholepinctl hub add URL --club NAME --role ROLE`")},
    {ErrorCode::HubNoSuchRole, QT_TRANSLATE_NOOP("Errors", "the database has no role '%1'"),
     QT_TRANSLATE_NOOP("Errors", "make it first, on the server: createuser --pwprompt ROLE")},
    {ErrorCode::HubRoleTaken, QT_TRANSLATE_NOOP("Errors", "role '%1' connects for another club, %2"),
     QT_TRANSLATE_NOOP("Errors", "make a role of its own for each club")},
    {ErrorCode::HubRoleOfDistrict, QT_TRANSLATE_NOOP("Errors", "role '%1' reads all clubs for the district"),
     QT_TRANSLATE_NOOP("Errors", "make a role of its own for each club")},
    {ErrorCode::HubNoSuchClub,
     QT_TRANSLATE_NOOP("Errors", "the hub has no club '%1' that this role may read; it has: %2"),
     QT_TRANSLATE_NOOP("Errors", "give the name as it stands there, and the URL with that club's role")},
    {ErrorCode::HubClubEmpty, QT_TRANSLATE_NOOP("Errors", "the hub has nothing of club '%1' yet"),
     QT_TRANSLATE_NOOP(
         "Errors",
         "exchange the club's file first: `tholepinctl hub join FILE URL`, `tholepinctl hub exchange FILE`")},
    {ErrorCode::HubOtherClub,
     QT_TRANSLATE_NOOP("Errors", "the hub has another club's record for this role: that of %1"),
     QT_TRANSLATE_NOOP("Errors", "use the URL with this club's own role")},
    {ErrorCode::HubOtherName,
     QT_TRANSLATE_NOOP("Errors", "this role of the hub is for club %1, and the file is of %2"),
     QT_TRANSLATE_NOOP(
         "Errors",
         "use this club's own role, or have the club added to the hub by the name that the file has")},
    {ErrorCode::HubForked,
     QT_TRANSLATE_NOOP("Errors", "machine %1 wrote two different records from its fact %2 on (%3 here, %4 on "
                                 "the hub), which no program does by itself: one may have been rewritten"),
     QT_TRANSLATE_NOOP("Errors",
                       "nothing was exchanged; `tholepinctl hub fetch` the hub's record into another file, "
                       "and merge this one into that with --as-new-machine, or put this one away")},
    {ErrorCode::HubFactRefused,
     QT_TRANSLATE_NOOP("Errors",
                       "fact %1 of machine %2 does not follow from the one before it, so the hub refused it"),
     QT_TRANSLATE_NOOP("Errors", "look this file over with `verify`, and restore a backup")},
    {ErrorCode::HubRecordDamaged,
     QT_TRANSLATE_NOOP("Errors", "the record on the hub is damaged, so nothing of it was taken in: %1"),
     QT_TRANSLATE_NOOP("Errors", "tell whoever administers the database which machine and fact it is")},
};

static_assert(isWhole(textsOfHub, ErrorCode::HubUrlUnreadable, ErrorCode::NoBoats),
              "a text for each code of these, in their order");

} // namespace

std::span<const ErrorText> hubTexts() {
    return textsOfHub;
}

} // namespace app
