-- The hub of a district: what `hub prepare` makes, and makes anew after an update. Whatever is there already stays.
-- Nobody but the functions below writes to the tables; whoever reads sees what the policies let through.

-- One after the other, however often it is given at once.
SELECT pg_advisory_xact_lock(1414024012);

DO $$
BEGIN
    IF current_setting('server_encoding') <> 'UTF8' THEN
        RAISE EXCEPTION 'the database has the encoding %, and needs UTF8', current_setting('server_encoding');
    END IF;
    -- Roles are those of the whole server: another database of it may have made them.
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'tholepin_club') THEN
        CREATE ROLE tholepin_club NOLOGIN;
    END IF;
    IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'tholepin_district') THEN
        CREATE ROLE tholepin_district NOLOGIN;
    END IF;
END $$;

CREATE SCHEMA IF NOT EXISTS tholepin;
GRANT USAGE ON SCHEMA tholepin TO tholepin_club, tholepin_district;

CREATE TABLE IF NOT EXISTS tholepin.club (
    number int GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
    name   text NOT NULL UNIQUE
);
-- Which club a database role connects for.
CREATE TABLE IF NOT EXISTS tholepin.member (
    role name PRIMARY KEY,
    club int NOT NULL REFERENCES tholepin.club
);
-- The machine that began the club: known from the first exchange on.
CREATE TABLE IF NOT EXISTS tholepin.founder (
    club    int PRIMARY KEY REFERENCES tholepin.club,
    machine uuid NOT NULL
);
CREATE TABLE IF NOT EXISTS tholepin.machine (
    club    int NOT NULL REFERENCES tholepin.club,
    machine uuid NOT NULL,
    PRIMARY KEY (club, machine)
);
-- A fact's columns are those of the club file. The hash before it is not kept twice: it stands in the row before.
CREATE TABLE IF NOT EXISTS tholepin.fact (
    club      int NOT NULL,
    machine   uuid NOT NULL,
    number    bigint NOT NULL CHECK (number > 0),
    id        uuid NOT NULL,
    at_utc    text NOT NULL,
    by        text NOT NULL,
    kind      text NOT NULL,
    body      text NOT NULL,
    hash      bytea NOT NULL,
    signature bytea NOT NULL,
    PRIMARY KEY (club, machine, number)
) PARTITION BY HASH (club);
DO $$
BEGIN
    FOR part IN 0 .. 31 LOOP
        EXECUTE format('CREATE TABLE IF NOT EXISTS tholepin.%I PARTITION OF tholepin.fact '
                       'FOR VALUES WITH (MODULUS 32, REMAINDER %s)', 'fact_' || part, part);
    END LOOP;
END $$;
-- Photographs beside the facts that hold their hashes.
CREATE TABLE IF NOT EXISTS tholepin.photo (
    club   int NOT NULL REFERENCES tholepin.club,
    sha256 bytea NOT NULL,
    bytes  bytea NOT NULL,
    PRIMARY KEY (club, sha256)
);
ALTER TABLE tholepin.photo ALTER COLUMN bytes SET STORAGE EXTERNAL; -- JPEG does not compress
-- Private cells beside the facts that hold their digests, of clubs that send them; until they are erased.
CREATE TABLE IF NOT EXISTS tholepin.private_cell (
    club  int NOT NULL REFERENCES tholepin.club,
    fact  uuid NOT NULL,
    field text NOT NULL,
    salt  text NOT NULL,
    value text NOT NULL,
    PRIMARY KEY (club, fact, field)
);
CREATE TABLE IF NOT EXISTS tholepin.erased (
    club int NOT NULL REFERENCES tholepin.club,
    fact uuid NOT NULL,
    PRIMARY KEY (club, fact)
);
-- What each machine last computed of its boats. It is no record, and so the only one that is written over.
CREATE TABLE IF NOT EXISTS tholepin.board (
    club    int NOT NULL REFERENCES tholepin.club,
    machine uuid NOT NULL,
    at      timestamptz NOT NULL,
    board   text NOT NULL,
    PRIMARY KEY (club, machine)
);
CREATE INDEX IF NOT EXISTS board_newest ON tholepin.board (club, at DESC);

-- The record is never changed, not even by its owner: neither by what is granted, nor by mistake.
CREATE OR REPLACE FUNCTION tholepin.refuse() RETURNS trigger
LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    RAISE EXCEPTION 'a record is never changed or deleted (%)', TG_TABLE_NAME;
END $$;
DO $$
DECLARE
    kept name;
BEGIN
    FOREACH kept IN ARRAY ARRAY['founder', 'machine', 'fact', 'photo', 'erased'] LOOP
        EXECUTE format('DROP TRIGGER IF EXISTS is_never_changed ON tholepin.%I', kept);
        EXECUTE format('CREATE TRIGGER is_never_changed BEFORE UPDATE OR DELETE ON tholepin.%I '
                       'FOR EACH ROW EXECUTE FUNCTION tholepin.refuse()', kept);
    END LOOP;
    -- A partition has the triggers of rows from its table, and those of statements not.
    FOREACH kept IN ARRAY ARRAY['founder', 'machine', 'fact', 'photo', 'erased']
                          || ARRAY(SELECT ('fact_' || part)::name FROM generate_series(0, 31) AS part) LOOP
        EXECUTE format('DROP TRIGGER IF EXISTS is_never_emptied ON tholepin.%I', kept);
        EXECUTE format('CREATE TRIGGER is_never_emptied BEFORE TRUNCATE ON tholepin.%I '
                       'FOR EACH STATEMENT EXECUTE FUNCTION tholepin.refuse()', kept);
    END LOOP;
END $$;

-- The club that whoever is connected may see; empty: none, or a district's role. By the session's role, which SET ROLE
-- does not change, and which is the same within the functions that write.
CREATE OR REPLACE FUNCTION tholepin.own_club() RETURNS int
LANGUAGE sql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
    SELECT club FROM tholepin.member WHERE role = session_user
$$;

DO $$
DECLARE
    seen  name;
    field text;
BEGIN
    FOREACH seen IN ARRAY ARRAY['club', 'founder', 'machine', 'fact', 'photo', 'board', 'private_cell', 'erased'] LOOP
        field := CASE seen WHEN 'club' THEN 'number' ELSE 'club' END;
        EXECUTE format('ALTER TABLE tholepin.%I ENABLE ROW LEVEL SECURITY', seen);
        EXECUTE format('DROP POLICY IF EXISTS own_club ON tholepin.%I', seen);
        EXECUTE format('CREATE POLICY own_club ON tholepin.%I FOR SELECT TO tholepin_club '
                       'USING (%I = (SELECT tholepin.own_club()))', seen, field);
        EXECUTE format('DROP POLICY IF EXISTS all_clubs ON tholepin.%I', seen);
        EXECUTE format('GRANT SELECT ON tholepin.%I TO tholepin_club', seen);
        -- What is private is the club's alone.
        CONTINUE WHEN seen IN ('private_cell', 'erased');
        EXECUTE format('CREATE POLICY all_clubs ON tholepin.%I FOR SELECT TO tholepin_district USING (true)', seen);
        EXECUTE format('GRANT SELECT ON tholepin.%I TO tholepin_district', seen);
    END LOOP;
    ALTER TABLE tholepin.member ENABLE ROW LEVEL SECURITY; -- nobody but the owner reads it
END $$;

-- The club of whoever is connected, if it is the one that machine began, or has none yet.
CREATE OR REPLACE FUNCTION tholepin.required_club(founder uuid) RETURNS int
LANGUAGE plpgsql STABLE SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    own   int := tholepin.own_club();
    known uuid;
BEGIN
    IF own IS NULL THEN
        RAISE EXCEPTION USING ERRCODE = 'TH001', MESSAGE = session_user::text;
    END IF;
    SELECT f.machine INTO known FROM tholepin.founder AS f WHERE f.club = own;
    IF known <> required_club.founder THEN
        RAISE EXCEPTION USING ERRCODE = 'TH002', MESSAGE = (SELECT name FROM tholepin.club WHERE number = own);
    END IF;
    RETURN own;
END $$;

-- What differs between the caller's chains (the newest number and hash of each) and those of the hub: one row at
-- least, with the club. `newest` is the hub's newest number, `met` the newest that both should have, `hash` the hub's
-- there. `facts`: how many the hub has. `is_news`: the board of that digest is not what this machine last published.
CREATE OR REPLACE FUNCTION tholepin.meet(founder uuid, machines uuid[], numbers bigint[], hashes text[], own uuid,
                                         board text)
RETURNS TABLE (club int, name text, is_founded boolean, facts bigint, is_news boolean, machine uuid, newest bigint,
               met bigint, hash text)
LANGUAGE plpgsql STABLE SET search_path = pg_catalog, pg_temp SET plan_cache_mode = force_custom_plan AS $$
#variable_conflict use_column
DECLARE
    own_number int := tholepin.required_club(founder);
BEGIN
    RETURN QUERY
    -- By the club's number in each place, and planned for it: so the server looks at its one partition.
    WITH theirs AS MATERIALIZED (
        SELECT m.machine, newest.number
        FROM tholepin.machine AS m
        CROSS JOIN LATERAL (SELECT f.number FROM tholepin.fact AS f WHERE f.club = own_number AND f.machine = m.machine
                            ORDER BY f.number DESC LIMIT 1) AS newest
        WHERE m.club = own_number),
    both_sides AS MATERIALIZED (
        SELECT machine, coalesce(theirs.number, 0) AS newest, coalesce(ours.number, 0) AS number, ours.hash,
               least(coalesce(theirs.number, 0), coalesce(ours.number, 0)) AS met
        FROM theirs FULL JOIN unnest(machines, numbers, hashes) AS ours(machine, number, hash) USING (machine)),
    differing AS (
        SELECT b.machine, b.newest, b.met, there.hash
        FROM both_sides AS b
        LEFT JOIN LATERAL (SELECT encode(f.hash, 'hex') AS hash FROM tholepin.fact AS f
                           WHERE f.club = own_number AND f.machine = b.machine AND f.number = b.met) AS there ON true
        WHERE b.newest <> b.number OR there.hash IS DISTINCT FROM b.hash)
    SELECT c.number, c.name, EXISTS (SELECT FROM tholepin.founder AS f WHERE f.club = own_number),
           (SELECT coalesce(sum(theirs.number), 0)::bigint FROM theirs),
           meet.own IS NOT NULL AND NOT EXISTS (
               SELECT FROM tholepin.board AS b WHERE b.club = own_number AND b.machine = meet.own
               AND encode(sha256(convert_to(b.board, 'UTF8')), 'hex') = meet.board),
           d.machine, d.newest, d.met, d.hash
    FROM tholepin.club AS c LEFT JOIN differing AS d ON true
    WHERE c.number = own_number
    ORDER BY d.machine;
END $$;

-- What is said of a fact that is refused: its number and its machine.
CREATE OR REPLACE FUNCTION tholepin.refuse_fact(code text, number bigint, machine uuid) RETURNS void
LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    RAISE EXCEPTION USING ERRCODE = code, MESSAGE = number || ' ' || encode(uuid_send(machine), 'hex');
END $$;

-- A chain begins with the fact that tells its key; its id is made of that, and but for the founder it goes on from a
-- fact of the club.
CREATE OR REPLACE FUNCTION tholepin.begin_machine(own int, founder uuid, machine uuid, kind text, body text)
RETURNS void LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    begun json := CASE kind WHEN 'machine-begun' THEN body::json END;
    continues text := begun->>'continues';
BEGIN
    IF left(encode(sha256(convert_to(begun->>'public_key', 'UTF8')), 'hex'), 32)
           IS DISTINCT FROM encode(uuid_send(machine), 'hex')
       OR (continues = '') IS DISTINCT FROM (machine = founder) THEN
        PERFORM tholepin.refuse_fact('TH004', 1, machine);
    END IF;
    IF continues <> '' AND NOT EXISTS (
        SELECT FROM tholepin.fact AS f WHERE f.club = own AND f.hash = decode(continues, 'hex')) THEN
        PERFORM tholepin.refuse_fact('TH004', 1, machine);
    END IF;
    INSERT INTO tholepin.founder AS f (club, machine) SELECT own, begin_machine.machine WHERE continues = ''
    ON CONFLICT DO NOTHING;
    INSERT INTO tholepin.machine AS m (club, machine) VALUES (own, begin_machine.machine);
END $$;

-- One after the other within a club: what is looked at afterwards is so until this is committed. By the club's row, which
-- nobody but the functions that write can lock: whoever connects may only read it.
CREATE OR REPLACE FUNCTION tholepin.lock_club() RETURNS void
LANGUAGE plpgsql SET search_path = pg_catalog, pg_temp AS $$
BEGIN
    PERFORM FROM tholepin.club WHERE number = tholepin.own_club() FOR NO KEY UPDATE;
END $$;

-- The lowest number at which a chain has another fact than these, which begin at `first`; none: it has them alike.
CREATE OR REPLACE FUNCTION tholepin.forked_at(own int, chain uuid, first bigint, hashes bytea[]) RETURNS bigint
LANGUAGE sql STABLE SET search_path = pg_catalog, pg_temp AS $$
    SELECT min(f.number)
    FROM unnest(hashes) WITH ORDINALITY AS g(hash, place)
    JOIN tholepin.fact AS f ON f.club = own AND f.machine = chain AND f.number = first + g.place - 1
    WHERE f.hash <> g.hash
$$;

-- Takes in a batch, all or nothing; what is there already is nothing new. Says how many were new. `known`: how many
-- facts of the hub the caller has taken in; when there are others by now, it looks at those first, for what it sends may
-- not go together with them. `machines`, `firsts`, `counts`: runs of facts that follow each other in a chain, from their
-- first number on; the other arrays have a place for each fact, one run behind the other.
CREATE OR REPLACE FUNCTION tholepin.push(founder uuid, known bigint, machines uuid[], firsts bigint[], counts bigint[],
                                         ids uuid[], at_utcs text[], bys text[], kinds text[], bodies text[],
                                         hashes bytea[], signatures bytea[])
RETURNS int LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp
SET plan_cache_mode = force_custom_plan AS $$
DECLARE
    own      int;
    run      record;
    head     record; -- the newest fact of its chain
    done     int := 0; -- the place before the run
    fresh    int; -- the place of its first new fact
    last     int; -- the place of its last fact
    next     bigint; -- the number of its first new fact
    put      int;
    added    int := 0;
    begun    uuid[] := '{}'; -- machines whose first fact is new
    erasures text[] := '{}'; -- bodies of facts that erase
BEGIN
    PERFORM tholepin.lock_club();
    own := tholepin.required_club(founder);
    IF known <> (SELECT coalesce(sum((SELECT max(f.number) FROM tholepin.fact AS f
                                      WHERE f.club = own AND f.machine = m.machine)), 0)
                 FROM tholepin.machine AS m WHERE m.club = own) THEN
        RAISE EXCEPTION USING ERRCODE = 'TH005', MESSAGE = 'another machine was quicker';
    END IF;

    FOR run IN SELECT r.machine, r.first, r.count FROM unnest(machines, firsts, counts) AS r(machine, first, count)
    LOOP
        SELECT f.number, f.hash INTO head FROM tholepin.fact AS f
        WHERE f.club = own AND f.machine = run.machine ORDER BY f.number DESC LIMIT 1;
        last := done + run.count;
        fresh := done + greatest(coalesce(head.number, 0) - run.first + 2, 1);
        next := run.first + fresh - done - 1;
        -- What is there already is compared by its hash alone: only what is put there now is read any further.
        IF fresh > done + 1 THEN
            put := tholepin.forked_at(own, run.machine, run.first, hashes[done + 1 : least(fresh - 1, last)]);
            IF put IS NOT NULL THEN
                PERFORM tholepin.refuse_fact('TH003', put, run.machine);
            END IF;
        END IF;
        IF run.first < 1 OR fresh <= last AND next <> coalesce(head.number, 0) + 1 THEN
            PERFORM tholepin.refuse_fact('TH004', next, run.machine);
        END IF;
        -- Number and hash follow from the row before; what does not follow is left out here and told below. The arrays
        -- are read side by side, so that nothing is sorted or gathered first.
        INSERT INTO tholepin.fact (club, machine, number, id, at_utc, by, kind, body, hash, signature)
        SELECT own, run.machine, g.number, g.id, g.at_utc, g.by, g.kind, g.body, g.hash, g.signature
        FROM (SELECT generate_series(next, next + last - fresh) AS number, unnest(ids[fresh : last]) AS id,
                     unnest(at_utcs[fresh : last]) AS at_utc, unnest(bys[fresh : last]) AS by,
                     unnest(kinds[fresh : last]) AS kind, unnest(bodies[fresh : last]) AS body,
                     unnest(coalesce(head.hash, '') || hashes[fresh : last - 1]) AS prev_hash,
                     unnest(hashes[fresh : last]) AS hash, unnest(signatures[fresh : last]) AS signature) AS g
        WHERE length(g.signature) = 64
          AND g.hash = sha256(convert_to(
              '["' || g.id || '","' || encode(g.prev_hash, 'hex') || '","' || encode(uuid_send(run.machine), 'hex')
              || '",' || g.number || ',' || to_json(g.at_utc) || ',' || to_json(g.by) || ',' || to_json(g.kind) || ','
              || g.body || ']', 'UTF8'));
        GET DIAGNOSTICS put = ROW_COUNT;
        IF put <> greatest(last - fresh + 1, 0) THEN
            PERFORM tholepin.refuse_fact('TH004', min(n), run.machine)
            FROM generate_series(next, next + last - fresh) AS n
            WHERE NOT EXISTS (SELECT FROM tholepin.fact AS f
                              WHERE f.club = own AND f.machine = run.machine AND f.number = n);
        END IF;
        IF next = 1 AND put > 0 THEN
            begun := begun || run.machine;
        END IF;
        erasures := erasures || ARRAY(
            SELECT e.body FROM (SELECT unnest(kinds[fresh : last]) AS kind, unnest(bodies[fresh : last]) AS body) AS e
            WHERE e.kind = 'private-erased');
        added := added + put;
        done := last;
    END LOOP;

    -- Whatever a chain goes on from may have come with it.
    PERFORM tholepin.begin_machine(own, push.founder, f.machine, f.kind, f.body)
    FROM unnest(begun) AS b(machine)
    JOIN tholepin.fact AS f ON f.club = own AND f.machine = b.machine AND f.number = 1;

    IF cardinality(erasures) > 0 THEN
        INSERT INTO tholepin.erased (club, fact)
        SELECT DISTINCT own, fact::uuid
        FROM unnest(erasures) AS g(body), json_array_elements_text(g.body::json->'facts') AS fact
        ON CONFLICT DO NOTHING;
        DELETE FROM tholepin.private_cell AS p USING tholepin.erased AS e
        WHERE p.club = own AND e.club = own AND e.fact = p.fact;
    END IF;

    IF added > 0 THEN
        PERFORM pg_notify('tholepin_club_' || own, '');
    END IF;
    RETURN added;
END $$;

-- A photograph, before the fact that tells of it.
CREATE OR REPLACE FUNCTION tholepin.push_photo(founder uuid, given text, picture bytea) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    own int := tholepin.required_club(founder);
BEGIN
    IF encode(sha256(picture), 'hex') <> given OR length(picture) > 4000000 THEN
        RAISE EXCEPTION 'that photograph is not the one that the record tells of';
    END IF;
    INSERT INTO tholepin.photo (club, sha256, bytes) VALUES (own, decode(given, 'hex'), picture)
    ON CONFLICT DO NOTHING;
END $$;

-- Private cells of a club that sends them; what was erased stays so.
CREATE OR REPLACE FUNCTION tholepin.push_private(founder uuid, facts uuid[], fields text[], salts text[], given text[])
RETURNS void LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    own int;
BEGIN
    PERFORM tholepin.lock_club(); -- so that nothing is erased meanwhile
    own := tholepin.required_club(founder);
    INSERT INTO tholepin.private_cell (club, fact, field, salt, value)
    SELECT own, c.fact, c.field, c.salt, c.value
    FROM unnest(facts, fields, salts, given) AS c(fact, field, salt, value)
    WHERE NOT EXISTS (SELECT FROM tholepin.erased AS e WHERE e.club = own AND e.fact = c.fact)
    ON CONFLICT DO NOTHING;
END $$;

CREATE OR REPLACE FUNCTION tholepin.publish(founder uuid, machine uuid, board text) RETURNS void
LANGUAGE plpgsql SECURITY DEFINER SET search_path = pg_catalog, pg_temp AS $$
DECLARE
    own int := tholepin.required_club(founder);
BEGIN
    IF octet_length(publish.board) > 1000000 THEN
        RAISE EXCEPTION 'that board is larger than a megabyte';
    END IF;
    IF json_typeof(publish.board::json->'boats') IS DISTINCT FROM 'array' THEN
        RAISE EXCEPTION 'that is no board';
    END IF;
    INSERT INTO tholepin.board AS b (club, machine, at, board)
    SELECT own, m.machine, now(), publish.board FROM tholepin.machine AS m
    WHERE m.club = own AND m.machine = publish.machine
    ON CONFLICT ON CONSTRAINT board_pkey DO UPDATE SET at = excluded.at, board = excluded.board;
END $$;

REVOKE ALL ON ALL TABLES IN SCHEMA tholepin FROM PUBLIC;
REVOKE ALL ON ALL FUNCTIONS IN SCHEMA tholepin FROM PUBLIC;
GRANT EXECUTE ON FUNCTION tholepin.own_club() TO tholepin_club, tholepin_district;
GRANT EXECUTE ON FUNCTION tholepin.required_club(uuid), tholepin.publish(uuid, uuid, text),
    tholepin.meet(uuid, uuid[], bigint[], text[], uuid, text),
    tholepin.push(uuid, bigint, uuid[], bigint[], bigint[], uuid[], text[], text[], text[], text[], bytea[], bytea[]),
    tholepin.push_photo(uuid, text, bytea), tholepin.push_private(uuid, uuid[], text[], text[], text[])
    TO tholepin_club;
