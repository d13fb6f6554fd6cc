#pragma once

#include <QObject>
#include <QString>

#include <map>

class QLineEdit;

namespace app {

/// The place of a group of settings that are about one club file.
QString settingsOf(const QString& group, const QString& clubFile);
/// The place of what is half written about a check, or on a page, of the club in that file; parts of it are
/// appended after a slash.
QString draftsOf(const QString& clubFile, const QString& subject);
/// Removes what is kept there and in its parts: it was sent.
void forgetDrafts(const QString& place);

/// The fields of a form that is half written, by their names; none: nothing is kept there any more.
void keepDraft(const QString& place, const std::map<QString, QString>& fields);
std::map<QString, QString> keptDraft(const QString& place);

/// Keeps the words of some fields from letter to letter, in the settings, so that they are there again when
/// the panel was left, and after a crash. A field that is emptied is kept no more. GUI thread.
class Drafts : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// By its object name, which must stay.
    void keep(QLineEdit& field);
    /// From now on the fields are kept there. Those of which something is kept get it; the others stay as
    /// they are. An empty place: nothing is kept, and nothing is lost.
    void open(const QString& place);
    void close() { m_place.clear(); }
    const QString& place() const { return m_place; }

private:
    void save(const QLineEdit& field) const;

    QString m_place;
    bool m_isReading = false;
    QList<QLineEdit*> m_fields;
};

} // namespace app
