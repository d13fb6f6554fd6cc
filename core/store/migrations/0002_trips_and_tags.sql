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
    event    TEXT NOT NULL
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
