#include "core/store/schema.h"

#include <array>

namespace undercowl::store {
namespace {

// Tables of the first part hold what was said and what this device is; those of the second are projections of
// 'entry' and may be dropped and rebuilt at any time. 'stream' names the job, machine or owner in all of
// them. Triggers keep 'entry' append-only even against a slip of our own: a body may go (2: redacted here) or
// come (1: it arrived without one), nothing else changes.
constexpr std::string_view schema1 = R"sql(
CREATE TABLE entry (
    id TEXT NOT NULL PRIMARY KEY,
    device TEXT NOT NULL,
    number INTEGER NOT NULL CHECK (number > 0),
    wall_ms INTEGER NOT NULL,
    counter INTEGER NOT NULL,
    kind TEXT NOT NULL,
    stream TEXT NOT NULL,
    subject TEXT NOT NULL,
    mechanic TEXT NOT NULL,
    supersedes TEXT NOT NULL,
    body TEXT NOT NULL,
    redacted INTEGER NOT NULL CHECK (redacted IN (0, 1, 2)),
    salt TEXT NOT NULL,
    body_hash TEXT NOT NULL,
    previous TEXT NOT NULL,
    hash TEXT NOT NULL,
    UNIQUE (device, number)
) STRICT;
CREATE INDEX entry_by_stream ON entry (stream);
CREATE TRIGGER entry_stays BEFORE DELETE ON entry BEGIN
    SELECT RAISE(ABORT, 'entries are never deleted');
END;
CREATE TRIGGER entry_is_final BEFORE UPDATE ON entry
WHEN NOT (new.id = old.id AND new.device = old.device AND new.number = old.number
          AND new.wall_ms = old.wall_ms AND new.counter = old.counter AND new.kind = old.kind
          AND new.stream = old.stream AND new.subject = old.subject AND new.mechanic = old.mechanic
          AND new.supersedes = old.supersedes AND new.salt = old.salt AND new.body_hash = old.body_hash
          AND new.previous = old.previous AND new.hash = old.hash
          AND ((new.redacted = 2 AND new.body = '') OR (old.redacted = 1 AND new.redacted = 0)))
BEGIN
    SELECT RAISE(ABORT, 'entries are never changed, only redacted');
END;

CREATE TABLE device_state (name TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE setting (name TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE draft (form TEXT NOT NULL PRIMARY KEY, json TEXT NOT NULL, at INTEGER NOT NULL)
    STRICT, WITHOUT ROWID;

CREATE TABLE mechanic (stream TEXT NOT NULL, id TEXT NOT NULL, name TEXT NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE machine (stream TEXT NOT NULL PRIMARY KEY, make TEXT NOT NULL, model TEXT NOT NULL, year INTEGER,
    frame_number TEXT NOT NULL, notes TEXT NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE owner (stream TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, phone TEXT NOT NULL,
    mail TEXT NOT NULL, address TEXT NOT NULL) STRICT, WITHOUT ROWID;

CREATE TABLE job_line (stream TEXT NOT NULL PRIMARY KEY, number TEXT NOT NULL, machine TEXT NOT NULL,
    machine_label TEXT NOT NULL, frame_number TEXT NOT NULL, owner TEXT NOT NULL, owner_name TEXT NOT NULL,
    reason TEXT NOT NULL, moment TEXT NOT NULL, stopped_key TEXT NOT NULL, stopped_values TEXT NOT NULL,
    next_key TEXT NOT NULL, next_values TEXT NOT NULL, waiting INTEGER NOT NULL, open_unsafe INTEGER NOT NULL,
    last_at INTEGER NOT NULL) STRICT, WITHOUT ROWID;
CREATE INDEX job_line_by_time ON job_line (last_at);
CREATE INDEX job_line_by_number ON job_line (number);
CREATE INDEX job_line_by_machine ON job_line (machine);
CREATE INDEX job_line_by_owner ON job_line (owner);

CREATE TABLE photo (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED, id TEXT NOT NULL,
    media TEXT NOT NULL, purpose TEXT NOT NULL, about TEXT NOT NULL, note TEXT NOT NULL,
    width INTEGER NOT NULL, height INTEGER NOT NULL, taken_at INTEGER NOT NULL,
    entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE finding (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED,
    id TEXT NOT NULL, text TEXT NOT NULL, severity TEXT NOT NULL, to_do TEXT NOT NULL,
    settled INTEGER NOT NULL, settled_how TEXT NOT NULL,
    entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE task (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED, id TEXT NOT NULL,
    title TEXT NOT NULL, waiting INTEGER NOT NULL, waiting_for TEXT NOT NULL, place INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE step (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED, id TEXT NOT NULL,
    task TEXT NOT NULL, title TEXT NOT NULL, bag TEXT NOT NULL, note TEXT NOT NULL, cautions TEXT NOT NULL,
    place INTEGER NOT NULL, entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    refitted_entry TEXT, refitted_mechanic TEXT, refitted_at INTEGER, refitted_note TEXT,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE hardware (stream TEXT NOT NULL, step TEXT NOT NULL, place INTEGER NOT NULL,
    count INTEGER NOT NULL, what TEXT NOT NULL, thread TEXT NOT NULL, length TEXT NOT NULL,
    torque_digits TEXT, torque_unit TEXT, PRIMARY KEY (stream, step, place),
    FOREIGN KEY (stream, step) REFERENCES step DEFERRABLE INITIALLY DEFERRED) STRICT, WITHOUT ROWID;
CREATE TABLE gathering (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED,
    id TEXT NOT NULL, title TEXT NOT NULL, kind TEXT NOT NULL, places INTEGER NOT NULL, rows INTEGER NOT NULL,
    seen_from TEXT NOT NULL, latch TEXT NOT NULL, first_photo TEXT, first_x REAL, first_y REAL,
    photo TEXT NOT NULL, step TEXT NOT NULL, PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE place_answer (stream TEXT NOT NULL, gathering TEXT NOT NULL, half TEXT NOT NULL,
    number INTEGER NOT NULL, slot INTEGER NOT NULL, answer TEXT NOT NULL,
    base TEXT NOT NULL, tracer TEXT, terminal TEXT NOT NULL, size_mm2 REAL, function TEXT NOT NULL,
    din TEXT NOT NULL, how TEXT NOT NULL, probability REAL NOT NULL, source TEXT NOT NULL,
    mark_photo TEXT, mark_x REAL, mark_y REAL, entry TEXT NOT NULL,
    PRIMARY KEY (stream, gathering, half, number, slot, answer),
    FOREIGN KEY (stream, gathering) REFERENCES gathering DEFERRABLE INITIALLY DEFERRED) STRICT, WITHOUT ROWID;
CREATE TABLE place_tag (stream TEXT NOT NULL, gathering TEXT NOT NULL, half TEXT NOT NULL,
    number INTEGER NOT NULL, slot INTEGER NOT NULL, tag TEXT NOT NULL,
    PRIMARY KEY (stream, gathering, half, number, slot),
    FOREIGN KEY (stream, gathering) REFERENCES gathering DEFERRABLE INITIALLY DEFERRED) STRICT, WITHOUT ROWID;
CREATE TABLE wire_check (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED,
    gathering TEXT NOT NULL, half TEXT NOT NULL, number INTEGER NOT NULL, slot INTEGER NOT NULL,
    outcome TEXT NOT NULL, against TEXT NOT NULL, note TEXT NOT NULL,
    entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, gathering, half, number, slot)) STRICT, WITHOUT ROWID;
CREATE TABLE part (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED, id TEXT NOT NULL,
    name TEXT NOT NULL, number TEXT NOT NULL, state TEXT NOT NULL, note TEXT NOT NULL, about TEXT NOT NULL,
    entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE reading (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED,
    id TEXT NOT NULL, about TEXT NOT NULL, what TEXT NOT NULL, value_digits TEXT NOT NULL,
    value_unit TEXT NOT NULL, instrument TEXT NOT NULL, uncertainty TEXT NOT NULL, low_digits TEXT,
    low_unit TEXT, high_digits TEXT, high_unit TEXT, limit_source TEXT NOT NULL, verdict TEXT NOT NULL,
    probability REAL, entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE memo (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED, id TEXT NOT NULL,
    media TEXT NOT NULL, text TEXT NOT NULL, about TEXT NOT NULL,
    entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;
CREATE TABLE recheck (stream TEXT NOT NULL REFERENCES job_line DEFERRABLE INITIALLY DEFERRED,
    id TEXT NOT NULL, what TEXT NOT NULL, after_digits TEXT, after_unit TEXT, after_days INTEGER,
    entry TEXT NOT NULL, mechanic TEXT NOT NULL, at INTEGER NOT NULL,
    PRIMARY KEY (stream, id)) STRICT, WITHOUT ROWID;

CREATE TABLE search_line (rowid INTEGER PRIMARY KEY, stream TEXT NOT NULL, kind TEXT NOT NULL,
    subject TEXT NOT NULL, detail TEXT NOT NULL, title TEXT NOT NULL, body TEXT NOT NULL,
    machine TEXT NOT NULL, UNIQUE (stream, kind, subject, detail)) STRICT;
CREATE VIRTUAL TABLE search USING fts5 (title, body, machine, content = 'search_line', content_rowid = 'rowid',
    tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
CREATE TRIGGER search_line_in AFTER INSERT ON search_line BEGIN
    INSERT INTO search (rowid, title, body, machine) VALUES (new.rowid, new.title, new.body, new.machine);
END;
CREATE TRIGGER search_line_out AFTER DELETE ON search_line BEGIN
    INSERT INTO search (search, rowid, title, body, machine)
        VALUES ('delete', old.rowid, old.title, old.body, old.machine);
END;
CREATE TRIGGER search_line_change AFTER UPDATE ON search_line BEGIN
    INSERT INTO search (search, rowid, title, body, machine)
        VALUES ('delete', old.rowid, old.title, old.body, old.machine);
    INSERT INTO search (rowid, title, body, machine) VALUES (new.rowid, new.title, new.body, new.machine);
END;
)sql";

// The list of jobs must not take longer in a shop that has handed over ten thousand.
constexpr std::string_view schema2 = R"sql(
CREATE INDEX job_line_open ON job_line (last_at) WHERE moment <> 'done';
CREATE INDEX job_line_done ON job_line (last_at) WHERE moment = 'done';
)sql";

// Each of several readings of one thing, as a JSON list; and numbers of parts and machines by their letters
// and digits alone (core/store/numbers.cpp), which were looked for in all of them.
constexpr std::string_view schema3 = R"sql(
ALTER TABLE reading ADD COLUMN repeated TEXT NOT NULL DEFAULT '[]';
UPDATE reading SET repeated = said.digits FROM
    (SELECT id, json_extract(body, '$.readings') AS digits FROM entry WHERE kind = 'reading.taken'
        AND CASE WHEN json_valid(body) THEN json_type(body, '$.readings') END = 'array') said
    WHERE said.id = reading.entry;
CREATE INDEX part_by_letters ON part
    (replace(replace(replace(replace(replace(upper(number), ' ', ''), '-', ''), '.', ''), '/', ''), '_', ''));
CREATE INDEX machine_by_letters ON machine
    (replace(replace(replace(replace(replace(upper(frame_number), ' ', ''), '-', ''), '.', ''), '/', ''), '_', ''));
)sql";

// What each machine waits for: the list of jobs is grouped by it. The rebuild that a new projection brings
// fills it in.
constexpr std::string_view schema4 = R"sql(
ALTER TABLE job_line ADD COLUMN waits TEXT NOT NULL DEFAULT 'bench time';
ALTER TABLE job_line ADD COLUMN waits_key TEXT NOT NULL DEFAULT '';
ALTER TABLE job_line ADD COLUMN waits_values TEXT NOT NULL DEFAULT '[]';
)sql";

constexpr std::array steps{Migration{1, schema1}, Migration{2, schema2}, Migration{3, schema3},
                           Migration{4, schema4}};

} // namespace

std::span<const Migration> migrations() {
    return steps;
}

} // namespace undercowl::store
