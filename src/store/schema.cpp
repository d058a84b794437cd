// SPDX-License-Identifier: GPL-3.0-or-later
// The tables, in words in docs/gym-file.md. Amounts in the smallest unit: _ms milliseconds, _ug
// micrograms, _tenths of a repetition, share and rate in billionths. Words as in a bundle. What
// refers to kit or exercises by id may name one that is not there; what belongs to something goes
// with it.
#include "store/migrations.hpp"

namespace bw::store {

const std::string_view kSchemaVersion1 = R"sql(
CREATE TABLE readable_by (program TEXT NOT NULL) STRICT;

CREATE TABLE setting (
    one           INTEGER PRIMARY KEY CHECK (one = 1),
    name          TEXT NOT NULL,
    mass_unit     TEXT NOT NULL,
    paper         TEXT NOT NULL,
    class_minutes INTEGER NOT NULL,
    places        INTEGER NOT NULL,
    opening_ms    INTEGER NOT NULL,
    closing_ms    INTEGER NOT NULL,
    extras        TEXT NOT NULL
) STRICT;
CREATE TABLE section_weight (
    kind  TEXT PRIMARY KEY,
    share INTEGER NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE rule_limit (
    name TEXT PRIMARY KEY,
    lo   REAL NOT NULL,
    hi   REAL NOT NULL,
    band INTEGER NOT NULL CHECK (band IN (0, 1))
) STRICT, WITHOUT ROWID;

CREATE TABLE kit_item (
    key    INTEGER PRIMARY KEY,
    id     TEXT NOT NULL UNIQUE,
    name   TEXT NOT NULL,
    units  INTEGER NOT NULL,
    claim  TEXT NOT NULL,
    bar_ug INTEGER,
    extras TEXT NOT NULL
) STRICT;
CREATE TABLE kit_load (
    kit     INTEGER NOT NULL REFERENCES kit_item ON DELETE CASCADE,
    mass_ug INTEGER NOT NULL,
    count   INTEGER NOT NULL,
    PRIMARY KEY (kit, mass_ug)
) STRICT, WITHOUT ROWID;
CREATE TABLE kit_plate (
    kit     INTEGER NOT NULL REFERENCES kit_item ON DELETE CASCADE,
    mass_ug INTEGER NOT NULL,
    count   INTEGER NOT NULL,
    PRIMARY KEY (kit, mass_ug)
) STRICT, WITHOUT ROWID;

CREATE TABLE exercise (
    key               INTEGER PRIMARY KEY,
    id                TEXT NOT NULL UNIQUE,
    name              TEXT NOT NULL,
    sides             TEXT NOT NULL,
    skill             INTEGER NOT NULL,
    measure           TEXT NOT NULL,
    seconds_per_rep   INTEGER,
    metres_per_second INTEGER,
    kcal_per_minute   INTEGER,
    setup_ms          INTEGER NOT NULL,
    load              TEXT NOT NULL,
    no_easier         TEXT NOT NULL,
    no_harder         TEXT NOT NULL,
    retired           INTEGER NOT NULL CHECK (retired IN (0, 1)),
    extras            TEXT NOT NULL
) STRICT;
CREATE TABLE exercise_share (
    exercise INTEGER NOT NULL REFERENCES exercise ON DELETE CASCADE,
    list     TEXT NOT NULL CHECK (list IN ('pattern', 'plane', 'muscle')),
    word     TEXT NOT NULL,
    share    INTEGER NOT NULL,
    PRIMARY KEY (exercise, list, word)
) STRICT, WITHOUT ROWID;
CREATE TABLE exercise_demand (
    exercise INTEGER NOT NULL REFERENCES exercise ON DELETE CASCADE,
    demand   TEXT NOT NULL,
    level    INTEGER NOT NULL,
    PRIMARY KEY (exercise, demand)
) STRICT, WITHOUT ROWID;
CREATE TABLE exercise_line (
    exercise INTEGER NOT NULL REFERENCES exercise ON DELETE CASCADE,
    list     TEXT NOT NULL
             CHECK (list IN ('role', 'easier', 'harder', 'swap', 'cue', 'caution')),
    at       INTEGER NOT NULL,
    line     TEXT NOT NULL,
    PRIMARY KEY (exercise, list, at)
) STRICT, WITHOUT ROWID;
CREATE TABLE exercise_choice (
    exercise INTEGER NOT NULL REFERENCES exercise ON DELETE CASCADE,
    at       INTEGER NOT NULL,
    PRIMARY KEY (exercise, at)
) STRICT, WITHOUT ROWID;
CREATE TABLE exercise_need (
    exercise INTEGER NOT NULL,
    choice   INTEGER NOT NULL,
    at       INTEGER NOT NULL,
    kit      TEXT NOT NULL,
    count    INTEGER NOT NULL,
    extras   TEXT NOT NULL,
    PRIMARY KEY (exercise, choice, at),
    FOREIGN KEY (exercise, choice) REFERENCES exercise_choice ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE block (
    month           INTEGER PRIMARY KEY,
    title           TEXT NOT NULL,
    format          TEXT,
    visits_per_week INTEGER NOT NULL,
    extras          TEXT NOT NULL
) STRICT;
CREATE TABLE stair_step (
    month      INTEGER NOT NULL REFERENCES block ON DELETE CASCADE,
    at         INTEGER NOT NULL,
    rounds     TEXT NOT NULL,
    rir_tenths INTEGER NOT NULL,
    intent     TEXT NOT NULL,
    extras     TEXT NOT NULL,
    PRIMARY KEY (month, at)
) STRICT, WITHOUT ROWID;
CREATE TABLE section (
    month        INTEGER NOT NULL REFERENCES block ON DELETE CASCADE,
    at           INTEGER NOT NULL,
    kind         TEXT NOT NULL,
    talk_ms      INTEGER NOT NULL,
    budget_lo_ms INTEGER,
    budget_hi_ms INTEGER,
    start        TEXT NOT NULL CHECK (start IN ('together', 'spread', 'counts')),
    extras       TEXT NOT NULL,
    PRIMARY KEY (month, at),
    CHECK ((budget_lo_ms IS NULL) = (budget_hi_ms IS NULL))
) STRICT, WITHOUT ROWID;
CREATE TABLE section_heads (
    month   INTEGER NOT NULL,
    section INTEGER NOT NULL,
    at      INTEGER NOT NULL,
    heads   INTEGER NOT NULL,
    PRIMARY KEY (month, section, at),
    FOREIGN KEY (month, section) REFERENCES section ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
CREATE TABLE section_group (
    month      INTEGER NOT NULL,
    section    INTEGER NOT NULL,
    at         INTEGER NOT NULL,
    rounds_lo  INTEGER NOT NULL,
    rounds_hi  INTEGER NOT NULL,
    rest_lo_ms INTEGER NOT NULL,
    rest_hi_ms INTEGER NOT NULL,
    extras     TEXT NOT NULL,
    PRIMARY KEY (month, section, at),
    FOREIGN KEY (month, section) REFERENCES section ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
CREATE TABLE slot (
    month         INTEGER NOT NULL,
    section       INTEGER NOT NULL,
    in_group      INTEGER NOT NULL,
    at            INTEGER NOT NULL,
    exercise      TEXT,
    role          TEXT,
    measure       TEXT,
    dose_lo       INTEGER,
    dose_hi       INTEGER,
    tempo         TEXT,
    rir_lo_tenths INTEGER,
    rir_hi_tenths INTEGER,
    main          INTEGER NOT NULL CHECK (main IN (0, 1)),
    locked        INTEGER NOT NULL CHECK (locked IN (0, 1)),
    note          TEXT NOT NULL,
    extras        TEXT NOT NULL,
    PRIMARY KEY (month, section, in_group, at),
    FOREIGN KEY (month, section, in_group) REFERENCES section_group ON DELETE CASCADE,
    CHECK ((measure IS NULL) = (dose_lo IS NULL) AND (measure IS NULL) = (dose_hi IS NULL)),
    CHECK ((rir_lo_tenths IS NULL) = (rir_hi_tenths IS NULL))
) STRICT, WITHOUT ROWID;
CREATE TABLE slot_pattern (
    month    INTEGER NOT NULL,
    section  INTEGER NOT NULL,
    in_group INTEGER NOT NULL,
    slot     INTEGER NOT NULL,
    at       INTEGER NOT NULL,
    pattern  TEXT NOT NULL,
    PRIMARY KEY (month, section, in_group, slot, at),
    FOREIGN KEY (month, section, in_group, slot) REFERENCES slot ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE member (
    key    INTEGER PRIMARY KEY,
    id     TEXT NOT NULL UNIQUE,
    name   TEXT NOT NULL,
    active INTEGER NOT NULL CHECK (active IN (0, 1)),
    extras TEXT NOT NULL
) STRICT;
CREATE TABLE member_flag (
    member INTEGER NOT NULL REFERENCES member ON DELETE CASCADE,
    at     INTEGER NOT NULL,
    demand TEXT NOT NULL,
    level  TEXT NOT NULL,
    note   TEXT NOT NULL,
    extras TEXT NOT NULL,
    PRIMARY KEY (member, at)
) STRICT, WITHOUT ROWID;
CREATE TABLE lifted (
    key INTEGER PRIMARY KEY,
    id  TEXT NOT NULL UNIQUE
) STRICT;
CREATE TABLE result (
    member     INTEGER NOT NULL REFERENCES member ON DELETE CASCADE,
    day        INTEGER NOT NULL,
    lifted     INTEGER NOT NULL REFERENCES lifted,
    set_no     INTEGER NOT NULL,
    reps       INTEGER NOT NULL,
    rir_tenths INTEGER,
    load_ug    INTEGER,
    extras     TEXT NOT NULL,
    PRIMARY KEY (member, day, lifted, set_no)
) STRICT, WITHOUT ROWID;
CREATE INDEX result_by_exercise ON result (lifted, member);
)sql";

const std::string_view kAcceptedTable = R"sql(
CREATE TABLE accepted (
    month    INTEGER NOT NULL REFERENCES block ON DELETE CASCADE,
    at       INTEGER NOT NULL,
    rule     TEXT NOT NULL,
    place    TEXT NOT NULL,
    about    TEXT NOT NULL,
    level    TEXT NOT NULL,
    measured REAL,
    limit_lo REAL NOT NULL,
    limit_hi REAL NOT NULL,
    band     INTEGER NOT NULL CHECK (band IN (0, 1)),
    reason   TEXT NOT NULL,
    extras   TEXT NOT NULL,
    PRIMARY KEY (month, at)
) STRICT, WITHOUT ROWID;
)sql";

// Whole rows, so that a line of results is read without a look into the table for each.
const std::string_view kResultsInLine = R"sql(
DROP INDEX result_by_exercise;
CREATE INDEX result_by_exercise ON result
    (lifted, member, day, set_no, reps, rir_tenths, load_ug, extras);
)sql";

} // namespace bw::store
