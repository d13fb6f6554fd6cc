#pragma once

#include <QString>

namespace app {

/// Where the help of a page stands: a document of `docs`, and the heading in it; empty: at its beginning.
struct HelpPlace {
    QString document; ///< "crew.md"
    QString heading;
};

/// Of a page by its id: "welcome", "board", "launch", "return", or one of the gear officer's ("kit"). A page
/// that no document tells of gets the gear officer's document. In German from hilfe.md, the short help.
HelpPlace helpOf(const QString& page, const QString& language);

/// A shipped document as Markdown, without its pictures; empty: there is none of that name.
QString helpDocument(const QString& name);

/// A heading as links name it: "A club's own spreadsheet" is "a-clubs-own-spreadsheet".
QString slugOf(const QString& heading);

} // namespace app
