-- Urgent launches after which the boat was whole again: their reason stands on the board no more.
CREATE TABLE urgent_ended (
    check_id TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL
) STRICT;

-- Events that checks are filed under; the newest filing holds.
CREATE TABLE check_event (
    check_id TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    key      TEXT NOT NULL,
    event    TEXT NOT NULL
) STRICT;
CREATE INDEX check_event_of_event ON check_event (key);

-- What a crew wrote about its trip (JSON, see core/record/documents.h); the newest holds.
CREATE TABLE operation (
    check_id TEXT PRIMARY KEY,
    stamp    TEXT NOT NULL,
    boat     TEXT NOT NULL,
    body     TEXT NOT NULL
) STRICT;
CREATE INDEX operation_of_boat ON operation (boat, stamp);

-- New tags of items. The newest of an item names it, the others and its first tag name nothing any more.
CREATE TABLE tag_change (
    tag   TEXT PRIMARY KEY,
    stamp TEXT NOT NULL,
    item  TEXT NOT NULL
) STRICT;
CREATE INDEX tag_change_of_item ON tag_change (item, stamp);

CREATE INDEX item_of_place ON item (place);
