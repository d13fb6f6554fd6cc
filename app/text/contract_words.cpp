#include "app/text/contract_words.h"

#include "app/text/register_words.h"
#include "core/register/sheets.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace app {
namespace {

struct ContractWordsText {
    Q_DECLARE_TR_FUNCTIONS(ContractWords)
};

bool takes(const core::Column& column, const std::string& choice) {
    if (column.type == core::CellType::Tolerance) return choice == "end_of_month";
    return column.offers(choice);
}

/// Empty: the contract has no such word.
QString wordOf(const std::string& contract) {
    for (const core::Sheet& sheet : core::allSheets())
        for (const core::Column& column : sheet.columns) {
            if (column.name == contract) return columnInWords(sheet.id, contract);
            if (takes(column, contract))
                return ContractWordsText::tr("“%1”").arg(choiceInWords(column, contract));
        }
    return {};
}

QString fileInWords(const std::string& file) {
    const core::Sheet* sheet = core::sheetOfFile(file);
    return sheet == nullptr ? QString() : rowsInWords(sheet->id);
}

} // namespace

QString inWordsOfForms(const QString& sentence) {
    static const QRegularExpression contract(
        QStringLiteral("(?<![\\w'„“\"])(?:[a-z_]+\\.csv|[a-z]+(?:_[a-z]+)+)(?![\\w'“”\"])"));
    QString plain;
    qsizetype at = 0;
    for (auto match = contract.globalMatch(sentence); match.hasNext();) {
        const auto found = match.next();
        const std::string word = found.captured().toStdString();
        const QString words = word.ends_with(".csv") ? fileInWords(word) : wordOf(word);
        plain += sentence.mid(at, found.capturedStart() - at) + (words.isEmpty() ? found.captured() : words);
        at = found.capturedEnd();
    }
    return plain + sentence.mid(at);
}

} // namespace app
