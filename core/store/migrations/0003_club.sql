-- The ledger: everything that changed the club's state, once and for ever.
CREATE TABLE fact (
    id        TEXT PRIMARY KEY,
    machine   TEXT NOT NULL,
    seq       INTEGER NOT NULL CHECK (seq > 0),
    at_utc    TEXT NOT NULL,
    by        TEXT NOT NULL,
    kind      TEXT NOT NULL,
    body      TEXT NOT NULL,
    prev_hash TEXT NOT NULL,
    hash      TEXT NOT NULL,
    signature TEXT NOT NULL,
    UNIQUE (machine, seq)
) STRICT;
CREATE INDEX fact_by_stamp ON fact (at_utc, machine, seq);
-- Which row of the register a fact wrote: its table and its key.
CREATE TABLE fact_of_row (
    fact TEXT NOT NULL, -- its id
    kind TEXT NOT NULL,
    key  TEXT NOT NULL,
    PRIMARY KEY (kind, key, fact)
) STRICT, WITHOUT ROWID;

CREATE TRIGGER fact_is_never_changed BEFORE UPDATE ON fact BEGIN
    SELECT RAISE(ABORT, 'a fact is never changed');
END;
CREATE TRIGGER fact_is_never_deleted BEFORE DELETE ON fact BEGIN
    SELECT RAISE(ABORT, 'a fact is never deleted');
END;

-- Private cells beside the facts that hold their digests, until they are erased.
CREATE TABLE private_cell (
    fact  TEXT NOT NULL, -- its id
    field TEXT NOT NULL, -- the column
    salt  TEXT NOT NULL,
    value TEXT NOT NULL,
    PRIMARY KEY (fact, field)
) STRICT;
-- The facts whose private cells were erased.
CREATE TABLE erased (
    fact  TEXT PRIMARY KEY,
    stamp TEXT NOT NULL
) STRICT;

-- What words of the club's own say in its spreadsheets, as somebody told; the newest of a word holds.
CREATE TABLE told_word (
    cells TEXT NOT NULL, -- in which it stands: sheet and column, as people.role
    word  TEXT NOT NULL,
    stamp TEXT NOT NULL,
    means TEXT NOT NULL, -- with the names of now
    is_forgotten INTEGER NOT NULL,
    PRIMARY KEY (cells, word)
) STRICT;

-- What happened to PINs of people; the newest of a person holds. What is kept of one stands in private_cell.
CREATE TABLE pin_change (
    id     TEXT PRIMARY KEY, -- of the fact
    stamp  TEXT NOT NULL,
    key    TEXT NOT NULL, -- the person's name, folded
    person TEXT NOT NULL,
    change TEXT NOT NULL, -- set, cleared, reset
    at     TEXT NOT NULL,
    by     TEXT NOT NULL
) STRICT;
CREATE INDEX pin_change_of_person ON pin_change (key, stamp);
-- Whether a signature is to be proven by the signer's PIN; the newest holds.
CREATE TABLE signing (
    stamp  TEXT PRIMARY KEY,
    proven INTEGER NOT NULL
) STRICT;
-- Wrong PINs that were given for a person on a computer since the last right one. No part of the record: deleting
-- nothing less than this file forgets them.
CREATE TABLE wrong_pin (
    computer TEXT NOT NULL,
    person   TEXT NOT NULL, -- the name, folded
    wrong    INTEGER NOT NULL,
    at       INTEGER NOT NULL, -- the last: milliseconds since 1970
    boot     TEXT NOT NULL,    -- and since this start of the computer
    awake    INTEGER NOT NULL,
    PRIMARY KEY (computer, person)
) STRICT, WITHOUT ROWID;
-- What somebody called a machine.
CREATE TABLE machine_name (
    machine TEXT PRIMARY KEY,
    stamp   TEXT NOT NULL,
    name    TEXT NOT NULL
) STRICT;

-- The facts whose private cells were not handed on to this file.
CREATE TABLE private_not_here (
    fact TEXT PRIMARY KEY
) STRICT;

-- Photographs beside the facts that hold their hashes.
CREATE TABLE photo (
    sha256 TEXT PRIMARY KEY, -- of its bytes
    bytes  BLOB NOT NULL
) STRICT;
-- What each is of: an item, or a log entry about an item or a boat.
CREATE TABLE photo_of (
    id     TEXT PRIMARY KEY, -- of the fact
    stamp  TEXT NOT NULL,
    item   TEXT NOT NULL,
    boat   TEXT NOT NULL,
    entry  TEXT NOT NULL, -- id of the log entry; empty: of the item itself
    sha256 TEXT NOT NULL,
    size   INTEGER NOT NULL, -- in bytes
    at     TEXT NOT NULL,
    by     TEXT NOT NULL
) STRICT;
CREATE INDEX photo_of_item ON photo_of (item, stamp);
CREATE INDEX photo_of_boat ON photo_of (boat, stamp);
CREATE INDEX photo_of_entry ON photo_of (entry, stamp);

-- Every renaming, and what each name that was ever changed stands for now: `key` is what it is of (a size's kit type)
-- and the name, folded.
CREATE TABLE renamed (
    id        TEXT PRIMARY KEY, -- of the fact
    stamp     TEXT NOT NULL,
    named     TEXT NOT NULL,
    of        TEXT NOT NULL,
    from_name TEXT NOT NULL,
    to_name   TEXT NOT NULL
) STRICT;
CREATE TABLE name_now (
    named TEXT NOT NULL,
    key   TEXT NOT NULL,
    name  TEXT NOT NULL,
    PRIMARY KEY (named, key)
) STRICT, WITHOUT ROWID;

-- The register. Cells are the canonical texts of the CSV contract, empty means unknown. `key` is the row's folded
-- name, `stamp` (instant, machine, number of a fact) the newest fact that wrote it.
CREATE TABLE club (
    key   TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    name  TEXT NOT NULL
) STRICT;
CREATE TABLE place (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    place TEXT NOT NULL DEFAULT '',
    tag TEXT NOT NULL DEFAULT '',
    until TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE kit_type (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    kit_type TEXT NOT NULL DEFAULT '',
    worn TEXT NOT NULL DEFAULT '',
    personal TEXT NOT NULL DEFAULT '',
    order_lead_days TEXT NOT NULL DEFAULT '',
    pack TEXT NOT NULL DEFAULT '',
    price TEXT NOT NULL DEFAULT '',
    spares TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE size (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    kit_type TEXT NOT NULL DEFAULT '',
    size TEXT NOT NULL DEFAULT '',
    mass_low_kg TEXT NOT NULL DEFAULT '',
    mass_high_kg TEXT NOT NULL DEFAULT '',
    chest_low_cm TEXT NOT NULL DEFAULT '',
    chest_high_cm TEXT NOT NULL DEFAULT '',
    wanted TEXT NOT NULL DEFAULT '',
    source TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE life_rule (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    kit_type TEXT NOT NULL DEFAULT '',
    part TEXT NOT NULL DEFAULT '',
    rule TEXT NOT NULL DEFAULT '',
    kind TEXT NOT NULL DEFAULT '',
    n TEXT NOT NULL DEFAULT '',
    steps TEXT NOT NULL DEFAULT '',
    event TEXT NOT NULL DEFAULT '',
    severity TEXT NOT NULL DEFAULT '',
    lead_days TEXT NOT NULL DEFAULT '',
    tolerance TEXT NOT NULL DEFAULT '',
    strict TEXT NOT NULL DEFAULT '',
    undated TEXT NOT NULL DEFAULT '',
    source TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE boat (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    boat TEXT NOT NULL DEFAULT '',
    boat_class TEXT NOT NULL DEFAULT '',
    tag TEXT NOT NULL DEFAULT '',
    place TEXT NOT NULL DEFAULT '',
    priority TEXT NOT NULL DEFAULT '',
    check_every_days TEXT NOT NULL DEFAULT '',
    until TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE manifest_line (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    boat_class TEXT NOT NULL DEFAULT '',
    boat TEXT NOT NULL DEFAULT '',
    kit_type TEXT NOT NULL DEFAULT '',
    quantity TEXT NOT NULL DEFAULT '',
    required TEXT NOT NULL DEFAULT '',
    substitutes TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE point (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    boat_class TEXT NOT NULL DEFAULT '',
    boat TEXT NOT NULL DEFAULT '',
    phase TEXT NOT NULL DEFAULT '',
    point TEXT NOT NULL DEFAULT '',
    kind TEXT NOT NULL DEFAULT '',
    unit TEXT NOT NULL DEFAULT '',
    low TEXT NOT NULL DEFAULT '',
    high TEXT NOT NULL DEFAULT '',
    required TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE person (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    person TEXT NOT NULL DEFAULT '',
    tag TEXT NOT NULL DEFAULT '',
    role TEXT NOT NULL DEFAULT '',
    mass_kg TEXT NOT NULL DEFAULT '',
    chest_cm TEXT NOT NULL DEFAULT '',
    until TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE item (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    code TEXT NOT NULL DEFAULT '',
    kit_type TEXT NOT NULL DEFAULT '',
    size TEXT NOT NULL DEFAULT '',
    boat TEXT NOT NULL DEFAULT '',
    place TEXT NOT NULL DEFAULT '',
    person TEXT NOT NULL DEFAULT '',
    state TEXT NOT NULL DEFAULT '',
    since TEXT NOT NULL DEFAULT '',
    why TEXT NOT NULL DEFAULT '',
    made TEXT NOT NULL DEFAULT '',
    first_use TEXT NOT NULL DEFAULT '',
    stamped TEXT NOT NULL DEFAULT '',
    registered TEXT NOT NULL DEFAULT '',
    maker TEXT NOT NULL DEFAULT '',
    gtin TEXT NOT NULL DEFAULT '',
    serial TEXT NOT NULL DEFAULT '',
    batch TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE part (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    code TEXT NOT NULL DEFAULT '',
    part TEXT NOT NULL DEFAULT '',
    made TEXT NOT NULL DEFAULT '',
    first_use TEXT NOT NULL DEFAULT '',
    stamped TEXT NOT NULL DEFAULT '',
    serial TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE service (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    code TEXT NOT NULL DEFAULT '',
    part TEXT NOT NULL DEFAULT '',
    rule TEXT NOT NULL DEFAULT '',
    day TEXT NOT NULL DEFAULT '',
    passed TEXT NOT NULL DEFAULT '',
    by TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE happening (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    code TEXT NOT NULL DEFAULT '',
    event TEXT NOT NULL DEFAULT '',
    day TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE use_record (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    code TEXT NOT NULL DEFAULT '',
    day TEXT NOT NULL DEFAULT '',
    hours TEXT NOT NULL DEFAULT '',
    launches TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE TABLE log_entry (
    key TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    position INTEGER NOT NULL DEFAULT 0,
    boat TEXT NOT NULL DEFAULT '',
    code TEXT NOT NULL DEFAULT '',
    day TEXT NOT NULL DEFAULT '',
    text TEXT NOT NULL DEFAULT '',
    severity TEXT NOT NULL DEFAULT '',
    by TEXT NOT NULL DEFAULT '',
    closed TEXT NOT NULL DEFAULT '',
    closing TEXT NOT NULL DEFAULT ''
) STRICT;
CREATE INDEX item_of_boat ON item (boat);
CREATE INDEX item_of_label ON item (serial, gtin);
CREATE INDEX boat_of_tag ON boat (tag);
CREATE INDEX place_of_tag ON place (tag);
CREATE INDEX person_of_tag ON person (tag);
CREATE INDEX size_of_type ON size (kit_type);
CREATE INDEX life_rule_of_type ON life_rule (kit_type);
CREATE INDEX manifest_line_of_boat ON manifest_line (boat);
CREATE INDEX manifest_line_of_class ON manifest_line (boat_class);
CREATE INDEX point_of_boat ON point (boat);
CREATE INDEX point_of_class ON point (boat_class);
CREATE INDEX part_of_item ON part (code);
CREATE INDEX service_of_item ON service (code);
CREATE INDEX happening_of_item ON happening (code);
CREATE INDEX use_record_of_item ON use_record (code);
CREATE INDEX log_entry_of_boat ON log_entry (boat, closed);
CREATE INDEX log_entry_of_item ON log_entry (code, closed);

-- Instants of records made in the program; those from CSV know only a day.
CREATE TABLE made_at (
    kind TEXT NOT NULL,
    key  TEXT NOT NULL,
    at   TEXT NOT NULL,
    PRIMARY KEY (kind, key)
) STRICT;

-- Every state that was ever given to an item. The newest holds, unless it is 'missing' and the item was seen later.
CREATE TABLE item_state (
    code     TEXT NOT NULL,
    stamp    TEXT NOT NULL,
    id       TEXT NOT NULL, -- of the fact
    state    TEXT NOT NULL,
    since    TEXT NOT NULL,
    why      TEXT NOT NULL,
    check_id TEXT NOT NULL, -- in which it was given; empty: in none
    rule     TEXT NOT NULL, -- whose record withdrew the item, or released it; empty: something else gave the state
    PRIMARY KEY (code, stamp)
) STRICT;
CREATE INDEX item_state_missing ON item_state (state, code);
CREATE INDEX item_state_of_check ON item_state (check_id) WHERE check_id <> '';

-- Checks. A check is of a boat (launch, return) or a place (stocktake). What was done in one stands under the id of its
-- fact, all of it: the newest holds that was not taken back.
CREATE TABLE check_run (
    id       TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    boat     TEXT NOT NULL,
    phase    TEXT NOT NULL,
    opened   TEXT NOT NULL
) STRICT;
CREATE INDEX check_run_of_boat ON check_run (boat, phase, stamp);
CREATE TABLE check_names (
    id       TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    check_id TEXT NOT NULL,
    people   TEXT NOT NULL
) STRICT;
CREATE INDEX check_names_of_check ON check_names (check_id, stamp);
CREATE TABLE sighting (
    id       TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    check_id TEXT NOT NULL,
    code     TEXT NOT NULL,
    at       TEXT NOT NULL,
    seen_by  TEXT NOT NULL,
    print    REAL -- what was left of the tag's print, 4 to 0, where a camera could tell
) STRICT;
CREATE INDEX sighting_of_check ON sighting (check_id, stamp);
CREATE INDEX sighting_of_code ON sighting (code, stamp);
CREATE INDEX sighting_of_print ON sighting (code, stamp) WHERE print IS NOT NULL;
CREATE TABLE point_value (
    id       TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    check_id TEXT NOT NULL,
    point    TEXT NOT NULL,
    value    REAL NOT NULL
) STRICT;
CREATE INDEX point_value_of_check ON point_value (check_id, point, stamp);
-- What undo took back: sightings, names, values, trips, events, damage; and service records made in error.
CREATE TABLE taken_back (
    act   TEXT PRIMARY KEY, -- id of the fact that told of it
    stamp TEXT NOT NULL
) STRICT;
-- Checks that were let go without a signature.
CREATE TABLE check_closed (
    check_id TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    reason   TEXT NOT NULL -- empty: nothing stood recorded
) STRICT;
CREATE TABLE sign_off (
    check_id TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    boat     TEXT NOT NULL,
    phase    TEXT NOT NULL,
    by       TEXT NOT NULL,
    at       TEXT NOT NULL,
    outcome  TEXT NOT NULL,
    urgent   TEXT NOT NULL,
    answer   TEXT NOT NULL
) STRICT;
CREATE INDEX sign_off_of_boat ON sign_off (boat, stamp);
CREATE INDEX sign_off_urgent ON sign_off (boat, stamp) WHERE urgent <> '';

-- Urgent launches after which the boat was whole again: their reason stands on the board no more.
CREATE TABLE urgent_ended (
    check_id TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL
) STRICT;

-- Events that checks are filed under; the newest filing holds.
CREATE TABLE check_event (
    id       TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    check_id TEXT NOT NULL,
    key      TEXT NOT NULL,
    event    TEXT NOT NULL,
    is_act   INTEGER NOT NULL -- 0: the check was opened with it, for it was today's
) STRICT;
CREATE INDEX check_event_of_event ON check_event (key);
CREATE INDEX check_event_of_check ON check_event (check_id, stamp);
-- The event that each check is filed under now.
CREATE VIEW event_of_check AS
SELECT check_id, stamp, key, event FROM check_event AS given
WHERE NOT EXISTS (SELECT 1 FROM taken_back WHERE act = given.id)
  AND NOT EXISTS (SELECT 1 FROM check_event AS later
                  WHERE later.check_id = given.check_id AND later.stamp > given.stamp
                    AND NOT EXISTS (SELECT 1 FROM taken_back WHERE act = later.id));

-- Events that hold for a time, of which each check is that is opened meanwhile; without a name: what held is over.
CREATE TABLE event_held (
    id    TEXT PRIMARY KEY, -- of the fact
    stamp TEXT NOT NULL,
    event TEXT NOT NULL,
    at    TEXT NOT NULL,
    until TEXT NOT NULL,
    by    TEXT NOT NULL
) STRICT;
CREATE INDEX event_held_by_time ON event_held (at, stamp);

-- What a crew wrote about its trip (JSON, see core/record/documents.h); the newest holds.
CREATE TABLE operation (
    id       TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    check_id TEXT NOT NULL,
    boat     TEXT NOT NULL,
    body     TEXT NOT NULL
) STRICT;
CREATE INDEX operation_of_boat ON operation (boat, stamp);
CREATE INDEX operation_of_check ON operation (check_id, stamp);

-- New tags of items. The newest of an item names it, the others and its first tag name nothing any more.
CREATE TABLE tag_change (
    tag   TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    item  TEXT NOT NULL
) STRICT;
CREATE INDEX tag_change_of_item ON tag_change (item, stamp);

CREATE INDEX item_of_place ON item (place);
