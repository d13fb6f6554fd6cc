#include "app/gui/widgets/drafts.h"

#include <QCryptographicHash>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QSettings>

namespace app {

QString settingsOf(const QString& group, const QString& clubFile) {
    // A path may hold what a key of the settings may not.
    const QByteArray hash = QCryptographicHash::hash(clubFile.toUtf8(), QCryptographicHash::Sha1);
    return QStringLiteral("%1/%2").arg(group, QString::fromLatin1(hash.toHex().left(16)));
}

QString draftsOf(const QString& clubFile, const QString& subject) {
    return settingsOf(QStringLiteral("drafts"), clubFile) + QLatin1Char('/') + subject;
}

void forgetDrafts(const QString& place) {
    if (!place.isEmpty()) QSettings().remove(place);
}

void keepDraft(const QString& place, const std::map<QString, QString>& fields) {
    QSettings settings;
    settings.remove(place);
    for (const auto& [name, words] : fields)
        settings.setValue(place + '/' + name, words);
}

std::map<QString, QString> keptDraft(const QString& place) {
    QSettings settings;
    settings.beginGroup(place);
    std::map<QString, QString> fields;
    for (const QString& name : settings.childKeys())
        fields[name] = settings.value(name).toString();
    return fields;
}

void Drafts::keep(QLineEdit& field) {
    m_fields << &field;
    connect(&field, &QLineEdit::textChanged, this, [this, &field] { save(field); });
}

void Drafts::open(const QString& place) {
    m_place = place;
    if (place.isEmpty()) return;
    const QScopedValueRollback<bool> reading(m_isReading, true);
    const QSettings settings;
    for (QLineEdit* field : m_fields) {
        const QVariant kept = settings.value(place + '/' + field->objectName());
        if (kept.isValid()) field->setText(kept.toString());
    }
}

void Drafts::save(const QLineEdit& field) const {
    if (m_place.isEmpty() || m_isReading) return;
    const QString key = m_place + '/' + field.objectName();
    if (field.text().isEmpty())
        QSettings().remove(key);
    else
        QSettings().setValue(key, field.text());
}

} // namespace app
