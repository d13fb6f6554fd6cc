#pragma once

#include "app/gui/club/check_session.h"
#include "app/gui/gear/bench/camera_page.h"

#include <memory>

class QLabel;
class QLineEdit;
class QPushButton;

namespace app {

class RowList;
class ChoiceBox;
class RowListModel;

/// A stocktake of a place: what the register has there against what is shown to the camera or typed; signed,
/// what was not seen is missing. Everything shown is on disk, so it can be left and gone on with.
class StocktakePage : public CameraPage {
    Q_OBJECT

public:
    explicit StocktakePage(GearTools tools, QWidget* parent = nullptr);
    ~StocktakePage() override;

    void refresh() override; ///< reads places and people anew
    void open(const QString& place);
    CheckSession* session() { return m_session.get(); }

signals:
    void signedOff(); ///< and what was missing then is shown

protected:
    void showEvent(QShowEvent* event) override;

private:
    struct Read {
        std::vector<std::string> places;
        std::vector<core::OpenCheck> unfinished;
        std::vector<core::Person> people;
    };

    void build();
    void connectParts();
    std::function<core::Result<ListTable>(core::Club&, core::CalendarDay)> listToCount() const;
    void take(const Read& read);
    void scan(const core::ScannedText& seen, core::SeenBy seenBy) override;
    void showState();
    void showStep(const FlowStep& step, const QString& text);
    void askForPlace();
    void leave();
    void showScan(const core::Scanned& scan, const QString& text);
    void showSigned(const core::SignedCheck& check);
    void adapt();
    void adaptSign();
    bool isBegunOnly() const; ///< and nothing stands in it
    void askForNumber();
    bool isNumberWanted() const;
    void finish();

    std::unique_ptr<CheckSession> m_session;
    QStringList m_unfinished; ///< places
    ChoiceBox* m_place;
    QPushButton* m_begin;
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
    QPushButton* m_undo;
    ChoiceBox* m_by;
    QLabel* m_emptyLabel; ///< nothing was shown: how many will be missing
    QLineEdit* m_number;  ///< that number, to be typed then
    QPushButton* m_sign;
};

} // namespace app
