#pragma once

#include "app/gui/check/check_list_model.h"

namespace app {

/// Lines of any page in the manner of a check's list: a mark, a thing, what stands at the right, a remark. A
/// line is read aloud by its own words, `detail`, for a mark means something else on each page.
class PlainListModel : public CheckListModel {
    Q_OBJECT

public:
    using CheckListModel::CheckListModel;

    QVariant data(const QModelIndex& index, int role) const override;
};

/// A heading over lines, with what stands at its right.
CheckRow headingRow(const QString& key, const QString& title, const QString& aside = {});
/// A line; `code` is shown in groups at the right and makes it pressable. `markWord` is what the mark means.
CheckRow plainRow(const QString& key, Mark mark, const QString& markWord, const QString& title,
                  const QString& remark = {}, const QString& code = {});

} // namespace app
