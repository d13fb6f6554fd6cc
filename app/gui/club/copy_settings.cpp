#include "app/gui/club/copy_settings.h"

#include "app/text/words.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QSettings>

namespace app {
namespace {

struct CopySettingsText {
    Q_DECLARE_TR_FUNCTIONS(Copies)
};

/// One file has one key, by whichever path it was opened.
QString pathOf(const std::filesystem::path& clubFile) {
    std::error_code unknown;
    const auto whole = std::filesystem::weakly_canonical(clubFile, unknown);
    return QString::fromStdString((unknown ? clubFile : whole).string());
}

} // namespace

CopySettings::CopySettings(const std::filesystem::path& clubFile) {
    // A path may hold what a key of the settings may not.
    const QByteArray hash = QCryptographicHash::hash(pathOf(clubFile).toUtf8(), QCryptographicHash::Sha1);
    m_key = QStringLiteral("copies/%1/").arg(QString::fromLatin1(hash.toHex().left(16)));
}

QString CopySettings::folder() const {
    return QSettings().value(m_key + "folder").toString();
}

void CopySettings::setFolder(const QString& folder) {
    if (folder.isEmpty())
        QSettings().remove(m_key + "folder");
    else
        QSettings().setValue(m_key + "folder", folder);
}

std::optional<core::Instant> CopySettings::newest() const {
    return core::Instant::parse(QSettings().value(m_key + "newest").toString().toStdString());
}

void CopySettings::setNewest(core::Instant at) {
    QSettings().setValue(m_key + "newest", QString::fromStdString(at.iso()));
}

QString copyReminder(std::optional<core::Instant> newest, std::optional<core::Instant> began,
                     core::CalendarDay today) {
    const auto since = newest ? newest : began;
    if (!since) return {};
    const int days = core::daysBetween(since->localDay(), today);
    if (days <= daysToRemind) return {};
    return newest ? CopySettingsText::tr("The newest backup was made %1.").arg(daysAgoInWords(days))
                  : CopySettingsText::tr("No backup of this club file was made on this machine yet.");
}

} // namespace app
