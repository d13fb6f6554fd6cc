#pragma once

#include "app/gui/club/check_session.h"
#include "app/gui/widgets/gear_page.h"
#include "app/text/printed_tags.h"

#include <memory>

class QLabel;
class QPushButton;

namespace app {

class CameraPanel;
class RowList;
class ChoiceBox;
class RowListModel;

/// A stocktake of a place: what the register has there against what is shown to the camera or typed; signed,
/// what was not seen is missing. Everything shown is on disk, so it can be left and gone on with.
class StocktakePage : public GearPage {
    Q_OBJECT

public:
    explicit StocktakePage(GearTools tools, QWidget* parent = nullptr);
    ~StocktakePage() override;

    void refresh() override; ///< reads places and people anew
    void open(const QString& place);
    CameraPanel& camera() { return *m_camera; }
    CheckSession* session() { return m_session.get(); }

signals:
    void signedOff();

protected:
    void say(const QString& sentence, bool toLookAt = false) override; ///< under the picture
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    struct Read {
        std::vector<std::string> places;
        std::vector<core::OpenCheck> unfinished;
        std::vector<core::Person> people;
        PrintedTags tags;
    };

    void build();
    void connectParts();
    void take(const Read& read);
    void scan(const QString& text, core::SeenBy seenBy);
    void showState();
    void showScan(const core::Scanned& scan, const QString& text);
    void showSigned(const core::SignedCheck& check);
    void adapt();

    std::unique_ptr<CheckSession> m_session;
    QStringList m_unfinished; ///< places
    PrintedTags m_tags;
    ChoiceBox* m_place;
    QPushButton* m_begin;
    CameraPanel* m_camera;
    QLabel* m_summary;
    RowListModel* m_lines;
    RowList* m_list;
    QPushButton* m_undo;
    ChoiceBox* m_by;
    QPushButton* m_sign;
};

} // namespace app
