#pragma once

#include "core/answers/item_record.h"
#include "core/answers/service_round.h"
#include "core/club/club_events.h"
#include "core/club/club_kit.h"
#include "core/club/club_log.h"
#include "core/club/club_manifests.h"
#include "core/club/club_photos.h"
#include "core/club/club_record.h"
#include "core/register/manifest_record.h"
#include "core/register/operation.h"
#include "core/store/ledger.h"
#include "core/tag/tag_code.h"
#include "tests/core/club/small_club.h"

namespace support {

/// What Pin seals of "4711": made once by libsodium's crypto_pwhash_str, so that tests need not.
inline constexpr const char* sealed4711 = "$argon2id$v=19$m=65536,t=2,p=1$bBoBFyaPei6ryXqBCn5e7Q$"
                                          "wewK5qm/b7bveWyCBfWKDnqG+1MGsj6GQQ4PSpmikIk";

/// The small club with rows in every sheet and a fact of every kind in its record.
class FullClub : public SmallClub {
public:
    FullClub() {
        import("people.csv", "person,mass_kg\nOdalys Finch,69\n");
        leaveOutMeasures();
        importTheRest();
        club.events().begin("Winter patrol", {}, "Bram Oke", now).value();
        goOutAndComeBack();
        club.kit().replaceTag("K0D6EKB9KR", "Odalys Finch", now).value();
        core::ServiceOrder order{
            .rule = "yearly look", .day = now.today, .by = "Odalys Finch", .scans = {jacket}};
        club.kit().recordService(order, now).value();
        (void)club.kit().withdrawRecord(jacket, {.rule = "yearly look", .day = "2025-03"}, "typed twice",
                                        "Odalys Finch", now);
        const auto entry =
            club.log().add("Petrel", "keel scratched", core::Severity::Remark, "Bram Oke", now).value();
        club.photos().addToItem(jacket, "\xFF\xD8\xFF jacket \xFF\xD9", "Bram Oke", now).value();
        club.photos().addToEntry(entry.id, "\xFF\xD8\xFF keel \xFF\xD9", "Bram Oke", now).value();
        const core::ManifestOwner tern{core::ManifestOwner::Kind::Boat, "Tern"};
        const core::ManifestLine own{.kitType = "radio", .quantity = 2};
        (void)club.manifests().changeLine(tern, own, {}, now);
        (void)club.manifests().dropOwnLine(tern, own, {}, now);
        import("people.csv", "person,mass_kg\nBram Oke,82\n");
        club.record().eraseMeasures("Bram Oke", "Odalys Finch").value();
        import("places.csv", "place\nBoat hous\n");
        club.register_().rename(core::Named::Place, "Boat hous", "Boat house", {}, "Bram Oke").value();
        const auto count = club.checks().openStocktake("Store", now).value();
        scan(count.check, jacket);
        stillOpen = open(core::Phase::Launch, "Tern");
        scan(stillOpen, "K80NSC1FX4");
        endUrgent();
        setPins();
    }

    std::string launch;    ///< the signed launch check of Petrel
    std::string back;      ///< and that of its return, which missed a paddle
    std::string stillOpen; ///< a launch check of Tern
    /// A life jacket with a cylinder, at the store.
    const std::string jacket =
        core::TagCode::mint(core::TagClass::Kit, [next = 1u]() mutable { return next *= 48271u; }).text();

private:
    /// As when a hub, which does not have them, handed their facts on.
    void leaveOutMeasures() {
        core::Database database(file(), core::Database::Mode::ReadWrite);
        database.script("INSERT INTO private_not_here SELECT DISTINCT fact FROM private_cell; "
                        "DELETE FROM private_cell; UPDATE person SET mass_kg = ''");
    }
    /// Of a person whose PIN opens nothing but that person's own signature.
    void setPins() {
        club.record().nameMachine("shed", {}).value();
        core::Database database(file(), core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger ledger(database);
        ledger.append(core::WordTold{"people", "role", "bow hand", "crew"}, {});
        ledger.append(core::WordTold{"items", "boat", "Bravo", "Petrel"}, {});
        ledger.append(core::WordTold{"items", "size", "Mittel", "M"}, {});
        ledger.append(core::WordTold{"people", "role", "boy", "crew"}, {});
        ledger.append(core::WordForgotten{"people", "role", "Boy"}, {});
        ledger.append(core::PinSet{"Odalys Finch", sealed4711}, "Bram Oke");
        ledger.append(core::PinCleared{"Bram Oke", true}, {});
        ledger.append(core::SignaturesProven{true}, {});
        ledger.append(core::SignaturesProven{false}, {});
        transaction.commit();
    }
    /// As when the boat's kit is whole again.
    void endUrgent() {
        core::Database database(file(), core::Database::Mode::ReadWrite);
        core::Transaction transaction(database);
        core::Ledger(database).append(core::UrgentEnded{launch}, {});
        transaction.commit();
    }
    void importTheRest() {
        import("places.csv", "place,until,note\nStore,2040-12-31,upstairs\n");
        import("kit_types.csv", "kit_type,worn,personal,order_lead_days,pack,price,spares,note\n"
                                "life jacket,yes,no,30,2,120.5,1,orange\n");
        import("sizes.csv",
               "kit_type,size,mass_low_kg,mass_high_kg,chest_low_cm,chest_high_cm,wanted,source\n"
               "life jacket,M,50,90,80,120,2,its label\n");
        import("life_rules.csv",
               "kit_type,part,rule,kind,n,steps,event,severity,lead_days,tolerance,strict,undated,source\n"
               "life jacket,,yearly look,inspect_every,12,108:6,,stop,30,14d,no,remark,its maker\n"
               "life jacket,,after a blow,after_event,,,blow,remark,,none,yes,ignore,its maker\n"
               "life jacket,cylinder,run,every_hours,100,,,stop,10,end_of_month,no,stop,its maker\n");
        import("boats.csv", "boat,boat_class,tag,place,priority,check_every_days,until,note\n"
                            "Petrel,inflatable,,Store,2,7,2040-12-31,blue\n");
        import("people.csv", "person,role,mass_kg,chest_cm,until,note\n"
                             "Odalys Finch,driver,70,95,2040-12-31,left-handed\n");
        import("manifest_lines.csv",
               "boat_class,kit_type,quantity,required,note\ninflatable,life jacket,1,no,worn\n");
        import("points.csv", "boat_class,phase,point,kind,unit,low,high,required,note\n"
                             "inflatable,return,engine flushed,timed,,60,600,no,with fresh water\n");
        import("items.csv",
               "code,kit_type,size,place,made,first_use,stamped,registered,maker,gtin,serial,batch,note\n" +
                   jacket +
                   ",life jacket,M,Store,2022-05,2022,2030-01-01,2022-06-01,Maker,"
                   "04012345678901,S1,B1,new\n");
        import("items.csv", "code,state,since,why\nKD2289T9SE,unserviceable,2026-02-01,damaged\n");
        import("parts.csv", "code,part,made,first_use,stamped,serial,note\n" + jacket +
                                ",cylinder,2022-05,2022,2030,C1,33 g\n");
        import("services.csv",
               "code,rule,day,passed,by,note\n" + jacket + ",yearly look,2025-03,yes,Bram Oke,fine\n");
        import("happenings.csv", "code,event,day,note\n" + jacket + ",blow,2025-04-01,on a rock\n");
        import("use.csv", "code,day,hours,launches\n" + jacket + ",2025-05-01,1.5,2\n");
        import("log.csv", "code,day,text,severity,by,closed,closing\n" + jacket +
                              ",2025-06-01,zip stiff,remark,Bram Oke,2025-06-02,greased\n");
    }

    void goOutAndComeBack() {
        launch = open();
        (void)club.checks().giveNames(launch, {"Odalys Finch", "Bram Oke"}, now);
        scanAll(launch, "K0D6EKB9KR");
        club.checks().scan(launch, {.text = jacket, .print = 1.4}, core::SeenBy::Camera, now).value();
        (void)club.checks().undo(launch, "taken back", now);
        (void)club.checks().recordPoint(launch, "bow chamber", 20, now);
        (void)club.events().fileUnder(launch, "Lake festival", now);
        club.checks().sign(launch, "Odalys Finch", "drill", now).value();
        back = open(core::Phase::Return);
        scanAll(back, "K80NSC1FX4");
        club.checks().sign(back, "Odalys Finch", "", now).value();
        (void)club.checks().discard(open(core::Phase::Launch, "Tern"), "nobody goes", now);
        (void)club.events().recordOperation(
            back, {.left = now.at, .people = {"Bram Oke"}, .hours = 1.5, .fuel = "5 l"}, now);
    }
};

} // namespace support
