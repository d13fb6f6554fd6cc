#include "app/text/history_words.h"

#include "app/text/register_words.h"
#include "app/text/text.h"
#include "app/text/words.h"
#include "core/register/sheets.h"

#include <QCoreApplication>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QMap>
#include <QStringList>

#include <algorithm>

namespace app {
namespace {

struct HistoryWordsText {
    Q_DECLARE_TR_FUNCTIONS(HistoryWords)
};

QString field(const QJsonObject& body, const char* name) {
    return app::text(body[QLatin1String(name)].toString());
}

QString dayInWords(const QString& iso) {
    const auto day = core::CalendarDay::parse(iso.toStdString());
    return day ? inWords(*day) : iso;
}

QString phaseInWords(const QString& phase) {
    if (phase == "stocktake") return HistoryWordsText::tr("stocktake");
    return phase == "return" ? HistoryWordsText::tr("return check") : HistoryWordsText::tr("launch check");
}

QString outcomeInWords(const QString& outcome) {
    if (outcome == "complete") return HistoryWordsText::tr("kit complete");
    return outcome == "incomplete" ? HistoryWordsText::tr("kit incomplete")
                                   : HistoryWordsText::tr("kit complete, with remarks");
}

QString meansInWords(const QString& seenBy) {
    if (seenBy == "camera") return HistoryWordsText::tr("by the camera");
    if (seenBy == "picture") return HistoryWordsText::tr("in a picture");
    return seenBy == "scanner" ? HistoryWordsText::tr("by a hand-held scanner")
                               : HistoryWordsText::tr("typed");
}

/// "120 months" of a rule's number, whose unit its kind says; "14 days" of a column that has a unit.
QString valueInWords(const core::Sheet& sheet, const core::Column& column, const QJsonObject& set) {
    const QString stored = field(set, std::string(column.name).c_str());
    const QString value = choiceInWords(column, stored.toStdString());
    const bool isCountOfRule = sheet.id == core::SheetId::LifeRules && column.name == "n";
    const QString unit =
        isCountOfRule ? countedBy(field(set, "kind").toStdString()) : unitOf(sheet.id, column.name);
    return unit.isEmpty() ? value : HistoryWordsText::tr("%1 %2").arg(value, unit);
}

/// The cells that a fact set, as "kit type: knife, size: M"; names and choices as in the forms.
QString cellsInWords(core::SheetId id, const QJsonObject& set) {
    const core::Sheet& sheet = core::sheet(id);
    QStringList words;
    for (const core::Column& column : sheet.columns)
        if (!field(set, std::string(column.name).c_str()).isEmpty())
            words << HistoryWordsText::tr("%1: %2").arg(columnInWords(id, column.name),
                                                        valueInWords(sheet, column, set));
    // A column of a later version is called as the record calls it.
    for (auto cell = set.begin(); cell != set.end(); ++cell)
        if (sheet.indexOf(cell.key().toStdString()) < 0 && !cell.value().toString().isEmpty())
            words << HistoryWordsText::tr("%1: %2").arg(app::text(cell.key()).replace('_', ' '),
                                                        app::text(cell.value().toString()));
    return words.join(HistoryWordsText::tr(", "));
}

QString stateInWords(const QJsonObject& set) {
    const QString state = field(set, "state");
    if (state == "missing") return HistoryWordsText::tr("marked missing");
    if (state == "unserviceable") return HistoryWordsText::tr("withdrawn: unserviceable");
    if (state == "written off")
        return HistoryWordsText::tr("written off: %1").arg(writtenOffAs(set["why"].toString().toStdString()));
    return HistoryWordsText::tr("back in use: serviceable");
}

/// The first row that names an item's kit type is its beginning.
QString itemInWords(const QJsonObject& set) {
    if (set.contains("kit_type"))
        return HistoryWordsText::tr("entered in the register: %1")
            .arg(cellsInWords(core::SheetId::Items, set));
    if (set.contains("state")) return stateInWords(set);
    return HistoryWordsText::tr("changed in the register: %1").arg(cellsInWords(core::SheetId::Items, set));
}

QString serviceInWords(const QJsonObject& row, const QJsonObject& set) {
    const QString part = field(row, "part");
    const QString rule =
        part.isEmpty() ? field(row, "rule") : HistoryWordsText::tr("%1, %2").arg(part, field(row, "rule"));
    const QString by = field(set, "by");
    const QString passed =
        field(set, "passed") == "no" ? HistoryWordsText::tr("not passed") : HistoryWordsText::tr("passed");
    const QString words =
        HistoryWordsText::tr("%1 on %2: %3").arg(rule, dayInWords(field(row, "day")), passed);
    return by.isEmpty() ? words : HistoryWordsText::tr("%1, by %2").arg(words, by);
}

QString logInWords(const QJsonObject& row, const QJsonObject& set) {
    if (!field(set, "closed").isEmpty() && !set.contains("severity"))
        return HistoryWordsText::tr("log entry “%1” closed: %2")
            .arg(field(row, "text"), field(set, "closing"));
    if (!field(set, "closed").isEmpty())
        return HistoryWordsText::tr("log entry: %1 (closed %2: %3)")
            .arg(field(row, "text"), dayInWords(field(set, "closed")), field(set, "closing"));
    return HistoryWordsText::tr("log entry: %1").arg(field(row, "text"));
}

QString useInWords(const QJsonObject& row, const QJsonObject& set) {
    QStringList use;
    if (!field(set, "hours").isEmpty() && field(set, "hours") != "0")
        use << HistoryWordsText::tr("%1 h").arg(field(set, "hours"));
    if (!field(set, "launches").isEmpty() && field(set, "launches") != "0")
        use << HistoryWordsText::tr("launches: %1").arg(field(set, "launches"));
    return HistoryWordsText::tr("used on %1: %2")
        .arg(dayInWords(field(row, "day")), use.join(HistoryWordsText::tr(", ")));
}

/// Measures are private: a person's history says that something was written, not what they are.
QString personInWords(QJsonObject set) {
    for (const core::Column& column : core::sheet(core::SheetId::People).columns)
        if (column.isPrivate) set.remove(text(std::string(column.name)));
    const QString cells = cellsInWords(core::SheetId::People, set);
    return cells.isEmpty() ? HistoryWordsText::tr("written in the register")
                           : HistoryWordsText::tr("written in the register: %1").arg(cells);
}

/// A row of one of the register's files.
QString rowInWords(const QString& kind, const QJsonObject& body) {
    const QJsonObject row = body["row"].toObject();
    const QJsonObject set = body["set"].toObject();
    if (kind == "item") return itemInWords(set);
    if (kind == "service") return serviceInWords(row, set);
    if (kind == "log_entry") return logInWords(row, set);
    if (kind == "use_record" && body["gone"].toBool())
        return HistoryWordsText::tr("use on %1 taken back").arg(dayInWords(field(row, "day")));
    if (kind == "use_record") return useInWords(row, set);
    if (kind == "happening")
        return HistoryWordsText::tr("%1 on %2").arg(field(row, "event"), dayInWords(field(row, "day")));
    if (kind == "person") return personInWords(set);
    const core::Sheet* sheet = core::sheetOfTable(kind.toStdString());
    if (!sheet) return kind; // of a later version
    const QString cells =
        body["gone"].toBool() ? HistoryWordsText::tr("removed") : cellsInWords(sheet->id, set);
    if (kind == "part") return HistoryWordsText::tr("part %1: %2").arg(field(row, "part"), cells);
    if (kind == "manifest_line")
        return HistoryWordsText::tr("manifest, %1: %2").arg(field(row, "kit_type"), cells);
    if (kind == "point") return HistoryWordsText::tr("point %1: %2").arg(field(row, "point"), cells);
    return HistoryWordsText::tr("written in the register: %1").arg(cells);
}

QString peopleInWords(const QJsonArray& people) {
    QStringList names;
    for (const auto& name : people)
        names << app::text(name.toString());
    return names.isEmpty() ? HistoryWordsText::tr("nobody named")
                           : HistoryWordsText::tr("aboard: %1").arg(listed(names));
}

QString operationInWords(const QJsonObject& operation) {
    QStringList words{HistoryWordsText::tr("launches: %1").arg(operation["launches"].toDouble())};
    if (operation.contains("hours")) words << HistoryWordsText::tr("%1 h").arg(operation["hours"].toDouble());
    if (!field(operation, "fuel").isEmpty())
        words << HistoryWordsText::tr("fuel: %1").arg(field(operation, "fuel"));
    if (!field(operation, "incidents").isEmpty()) words << field(operation, "incidents");
    return HistoryWordsText::tr("log of the operation: %1").arg(words.join(HistoryWordsText::tr(", ")));
}

QString signedInWords(const QJsonObject& body) {
    const QString words = HistoryWordsText::tr("%1 signed: %2")
                              .arg(phaseInWords(field(body, "phase")),
                                   outcomeInWords(field(body["answer"].toObject(), "outcome")));
    const QString urgent = field(body, "urgent");
    return urgent.isEmpty() ? words : HistoryWordsText::tr("%1; urgent: %2").arg(words, urgent);
}

QString openedInWords(const QJsonObject& body) {
    const QString words =
        HistoryWordsText::tr("%1 of %2 begun").arg(phaseInWords(field(body, "phase")), field(body, "boat"));
    const QString event = field(body, "event");
    return event.isEmpty() ? words : HistoryWordsText::tr("%1, filed under %2").arg(words, event);
}

/// Of PINs, signatures and machines.
QString rightInWords(const QString& kind, const QJsonObject& body) {
    if (kind == "pin-set") return HistoryWordsText::tr("PIN set");
    if (kind == "pin-cleared")
        return body["reset"].toBool() ? HistoryWordsText::tr("PIN reset by whoever owns the file")
                                      : HistoryWordsText::tr("PIN removed");
    if (kind == "signatures-proven")
        return body["asked"].toBool() ? HistoryWordsText::tr("signatures are to be proven by PIN")
                                      : HistoryWordsText::tr("signatures need no PIN any more");
    if (kind == "machine-named")
        return HistoryWordsText::tr("this machine is called %1").arg(field(body, "name"));
    return kind;
}

QString checkInWords(const QString& kind, const QJsonObject& body) {
    if (kind == "check-opened") return openedInWords(body);
    if (kind == "names-given") return peopleInWords(body["people"].toArray());
    if (kind == "tag-seen")
        return HistoryWordsText::tr("seen in a check, %1").arg(meansInWords(field(body, "seen_by")));
    if (kind == "act-taken-back") {
        const QString reason = field(body, "reason");
        if (!reason.isEmpty()) return HistoryWordsText::tr("writing off taken back: %1").arg(reason);
        return field(body, "check").isEmpty()
                   ? HistoryWordsText::tr("a photograph taken away: it was of something else")
                   : HistoryWordsText::tr("the last of it taken back");
    }
    if (kind == "check-closed") {
        const QString reason = field(body, "reason");
        return reason.isEmpty() ? HistoryWordsText::tr("check left; nothing was recorded in it")
                                : HistoryWordsText::tr("check closed unsigned: %1").arg(reason);
    }
    if (kind == "point-recorded")
        return HistoryWordsText::tr("%1: %2").arg(field(body, "point"),
                                                  numberInWords(body["value"].toDouble()));
    if (kind == "check-signed") return signedInWords(body);
    if (kind == "record-withdrawn")
        return HistoryWordsText::tr("record of %1 on %2 withdrawn: %3")
            .arg(field(body, "rule"), dayInWords(field(body, "day")), field(body, "reason"));
    if (kind == "photo-added")
        return body["of_entry"].toBool() ? HistoryWordsText::tr("photograph of “%1”").arg(field(body, "text"))
                                         : HistoryWordsText::tr("photograph of it");
    if (kind == "event-given") return HistoryWordsText::tr("filed under %1").arg(field(body, "event"));
    if (kind == "operation-logged") return operationInWords(body["operation"].toObject());
    if (kind == "renamed")
        return HistoryWordsText::tr("%1 is called %2 from here on")
            .arg(field(body, "from"), field(body, "to"));
    if (kind == "word-told")
        return HistoryWordsText::tr("in a spreadsheet, “%1” means “%2”")
            .arg(field(body, "word"), field(body, "means"));
    if (kind == "word-forgotten")
        return HistoryWordsText::tr("in a spreadsheet, what “%1” means is asked again")
            .arg(field(body, "word"));
    if (kind == "private-erased") return HistoryWordsText::tr("measures or PIN erased");
    if (kind == "tag-fixed")
        return HistoryWordsText::tr("new tag %1").arg(codeInWords(field(body, "tag").toStdString()));
    return rightInWords(kind, body);
}

} // namespace

QString inWords(const core::HistoryLine& line) {
    const QJsonObject body = QJsonDocument::fromJson(QByteArray::fromStdString(line.body)).object();
    const QString kind = text(line.kind);
    if (body.contains("set") && body.contains("row")) return rowInWords(kind, body);
    return checkInWords(kind, body);
}

} // namespace app
