-- The reference tables as they stand in the program: one table a CSV file of the same name, with
-- the same columns. A column whose name ends in _nm is a length in whole nanometres; the file calls
-- it by the name without _nm and writes it in the unit of the row, as a fraction or a decimal.
-- Empty cells are unknown. A CHECK is named after the column that it guards.

-- How sure a row is.
CREATE TABLE confidence (
    word  TEXT PRIMARY KEY,
    about TEXT NOT NULL CONSTRAINT about CHECK (about <> '')
) STRICT, WITHOUT ROWID;

-- What a row was taken from, and what agrees with it.
CREATE TABLE source (
    id        TEXT PRIMARY KEY,
    citation  TEXT NOT NULL CONSTRAINT citation CHECK (citation <> ''),
    agreement TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Screw and thread sizes; the size of a shoulder screw is its shoulder.
CREATE TABLE size (
    name        TEXT PRIMARY KEY,
    system      TEXT NOT NULL CONSTRAINT system CHECK (system IN ('number', 'inch', 'metric', 'ba')),
    unit        TEXT NOT NULL CONSTRAINT unit CHECK (unit = iif(system IN ('metric', 'ba'), 'mm', 'in')),
    diameter_nm INTEGER NOT NULL CONSTRAINT diameter CHECK (diameter_nm BETWEEN 500000 AND 110000000),
    source      TEXT NOT NULL REFERENCES source (id),
    confidence  TEXT NOT NULL REFERENCES confidence (word),
    note        TEXT NOT NULL
) STRICT, WITHOUT ROWID;

CREATE TABLE form (
    name  TEXT PRIMARY KEY,
    title TEXT NOT NULL CONSTRAINT title CHECK (title <> '')
) STRICT, WITHOUT ROWID;

-- What names a form in the text of a screw.
CREATE TABLE form_word (
    word TEXT PRIMARY KEY CONSTRAINT word CHECK (word = lower(word) AND word <> ''),
    form TEXT NOT NULL REFERENCES form (name)
) STRICT, WITHOUT ROWID;

-- One standard's head dimensions for one form. A head without a published minimum takes the spread
-- of the same size in the sister series.
CREATE TABLE series (
    rank      INTEGER PRIMARY KEY CONSTRAINT rank CHECK (rank > 0),
    name      TEXT NOT NULL UNIQUE,
    form      TEXT NOT NULL REFERENCES form (name),
    title     TEXT NOT NULL CONSTRAINT title CHECK (title <> ''),
    withdrawn INTEGER NOT NULL CONSTRAINT withdrawn CHECK (withdrawn IN (0, 1)),
    sister    TEXT REFERENCES series (name) CONSTRAINT sister CHECK (sister <> name),
    note      TEXT NOT NULL
) STRICT;

-- What names a series in the text of a screw; one word may name several, the form then tells.
CREATE TABLE series_word (
    series TEXT NOT NULL REFERENCES series (name),
    word   TEXT NOT NULL CONSTRAINT word CHECK (word = lower(word) AND word <> ''),
    PRIMARY KEY (series, word)
) STRICT, WITHOUT ROWID;

-- Heads as printed. Pitches are threads per inch, or millimetres for metric and BA threads. The
-- diameter of a hexagon is across its corners, of one with a flange that of the flange; its drive
-- size, across its flats.
CREATE TABLE head (
    id                   INTEGER PRIMARY KEY,
    series               TEXT NOT NULL REFERENCES series (name),
    size                 TEXT NOT NULL REFERENCES size (name),
    thread               TEXT REFERENCES size (name),
    coarse               TEXT NOT NULL,
    fine                 TEXT NOT NULL CONSTRAINT fine CHECK (coarse || fine <> ''),
    unit                 TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    screw_dia_nm         INTEGER NOT NULL CONSTRAINT screw_dia CHECK (screw_dia_nm BETWEEN 900000 AND 110000000),
    head_dia_max_nm      INTEGER NOT NULL CONSTRAINT head_dia_max CHECK (head_dia_max_nm BETWEEN screw_dia_nm * 11 / 10 AND screw_dia_nm * 25 / 10),
    head_dia_knurled_nm  INTEGER CONSTRAINT head_dia_knurled CHECK (head_dia_knurled_nm BETWEEN head_dia_max_nm AND head_dia_max_nm * 11 / 10),
    head_dia_min_nm      INTEGER CONSTRAINT head_dia_min CHECK (head_dia_min_nm BETWEEN head_dia_max_nm * 8 / 10 AND head_dia_max_nm - 1),
    head_height_max_nm   INTEGER NOT NULL CONSTRAINT head_height_max CHECK (head_height_max_nm BETWEEN screw_dia_nm / 4 AND screw_dia_nm * 12 / 10),
    head_height_min_nm   INTEGER CONSTRAINT head_height_min CHECK (head_height_min_nm BETWEEN head_height_max_nm * 7 / 10 AND head_height_max_nm - 1),
    drive                TEXT NOT NULL CONSTRAINT drive CHECK (drive IN ('hex socket', 'hexalobular', 'slot', 'cross recess', 'hex')),
    drive_size_nm        INTEGER CONSTRAINT drive_size CHECK (drive_size_nm > 0 AND drive_size_nm < head_dia_max_nm),
    recess               TEXT NOT NULL,
    fillet_dia_max_nm    INTEGER CONSTRAINT fillet_dia_max CHECK (fillet_dia_max_nm > screw_dia_nm AND fillet_dia_max_nm < head_dia_max_nm),
    printed              TEXT NOT NULL,
    source               TEXT NOT NULL REFERENCES source (id),
    confidence           TEXT NOT NULL REFERENCES confidence (word),
    note                 TEXT NOT NULL,
    UNIQUE (series, size)
) STRICT;
CREATE INDEX head_by_size ON head (size);

CREATE TABLE washer_series (
    rank   INTEGER PRIMARY KEY CONSTRAINT rank CHECK (rank > 0),
    name   TEXT NOT NULL UNIQUE,
    title  TEXT NOT NULL CONSTRAINT title CHECK (title <> ''),
    kind   TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('plain', 'spring lock')),
    inside TEXT NOT NULL CONSTRAINT inside CHECK (inside IN ('basic', 'least')),
    note   TEXT NOT NULL
) STRICT;

CREATE TABLE washer (
    id                 INTEGER PRIMARY KEY,
    series             TEXT NOT NULL REFERENCES washer_series (name),
    size               TEXT NOT NULL REFERENCES size (name),
    unit               TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    inside_dia_nm      INTEGER NOT NULL CONSTRAINT inside_dia CHECK (inside_dia_nm > 0),
    outside_dia_max_nm INTEGER NOT NULL CONSTRAINT outside_dia_max CHECK (outside_dia_max_nm BETWEEN inside_dia_nm * 11 / 10 AND inside_dia_nm * 3),
    thickness_max_nm   INTEGER CONSTRAINT thickness_max CHECK (thickness_max_nm BETWEEN 200000 AND outside_dia_max_nm / 2),
    source             TEXT NOT NULL REFERENCES source (id),
    confidence         TEXT NOT NULL REFERENCES confidence (word),
    note               TEXT NOT NULL,
    UNIQUE (series, size)
) STRICT;
CREATE INDEX washer_by_size ON washer (size);

-- Drills by name. Those in an index are what a shop with that index owns; the others are only
-- named by a table.
CREATE TABLE drill (
    name        TEXT PRIMARY KEY,
    kind        TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('fraction', 'number', 'letter', 'metric')),
    unit        TEXT NOT NULL CONSTRAINT unit CHECK (unit = iif(kind = 'metric', 'mm', 'in')),
    diameter_nm INTEGER NOT NULL CONSTRAINT diameter CHECK (diameter_nm BETWEEN 300000 AND 80000000),
    in_index    INTEGER NOT NULL CONSTRAINT in_index CHECK (in_index IN (0, 1)),
    source      TEXT NOT NULL REFERENCES source (id),
    confidence  TEXT NOT NULL REFERENCES confidence (word),
    note        TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE INDEX drill_by_kind ON drill (kind, diameter_nm);

-- Clearance holes by the drill that makes them, and the largest hole each may come out as.
CREATE TABLE clearance (
    id            INTEGER PRIMARY KEY,
    system        TEXT NOT NULL CONSTRAINT system CHECK (system IN ('ASME B18.2.8', 'ISO 273', 'shop chart', 'DIN 69 old medium')),
    size          TEXT NOT NULL REFERENCES size (name),
    close         TEXT REFERENCES drill (name),
    normal        TEXT REFERENCES drill (name),
    loose         TEXT REFERENCES drill (name),
    unit          TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    close_max_nm  INTEGER CONSTRAINT close_max CHECK (close_max_nm > 0),
    normal_max_nm INTEGER CONSTRAINT normal_max CHECK (normal_max_nm > close_max_nm),
    loose_max_nm  INTEGER CONSTRAINT loose_max CHECK (loose_max_nm > normal_max_nm),
    printed       TEXT NOT NULL,
    source        TEXT NOT NULL REFERENCES source (id),
    confidence    TEXT NOT NULL REFERENCES confidence (word),
    note          TEXT NOT NULL,
    UNIQUE (system, size),
    CONSTRAINT close CHECK (coalesce(close, normal, loose) IS NOT NULL)
) STRICT;
CREATE INDEX clearance_by_size ON clearance (size);

-- The rules that counterbores are published by; the heads that each is for are in counterbore_head.
CREATE TABLE counterbore_rule (
    rank      INTEGER PRIMARY KEY CONSTRAINT rank CHECK (rank > 0),
    name      TEXT NOT NULL UNIQUE,
    kind      TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('recommended', 'tool', 'least cutter', 'spotface', 'socket wrench', 'ring spanner', 'with washer', 'other')),
    tolerance TEXT NOT NULL,
    washer    TEXT REFERENCES washer_series (name),
    about     TEXT NOT NULL CONSTRAINT about CHECK (about <> '')
) STRICT;

CREATE TABLE counterbore_head (
    rule   TEXT NOT NULL REFERENCES counterbore_rule (name),
    series TEXT NOT NULL REFERENCES series (name),
    note   TEXT NOT NULL,
    PRIMARY KEY (rule, series)
) STRICT, WITHOUT ROWID;

-- Counterbores and spotfaces. `depth` is from the surface; `depth_addition` is over head height and
-- washer. `head` is the head or washer that the row was worked out for, where that is printed.
CREATE TABLE counterbore (
    id                  INTEGER PRIMARY KEY,
    rule                TEXT NOT NULL REFERENCES counterbore_rule (name),
    size                TEXT NOT NULL REFERENCES size (name),
    unit                TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    diameter_nm         INTEGER NOT NULL CONSTRAINT diameter CHECK (diameter_nm > 0),
    depth_nm            INTEGER CONSTRAINT depth CHECK (depth_nm > 0 AND depth_nm < diameter_nm),
    depth_addition_nm   INTEGER CONSTRAINT depth_addition CHECK (depth_addition_nm IS NULL OR (depth_addition_nm > 0 AND depth_nm IS NULL)),
    edge_countersink_nm INTEGER CONSTRAINT edge_countersink CHECK (edge_countersink_nm > 0 AND edge_countersink_nm < diameter_nm),
    close               TEXT REFERENCES drill (name),
    normal              TEXT REFERENCES drill (name),
    head_nm             INTEGER CONSTRAINT head CHECK (head_nm > 0 AND head_nm < diameter_nm),
    printed             TEXT NOT NULL,
    source              TEXT NOT NULL REFERENCES source (id),
    confidence          TEXT NOT NULL REFERENCES confidence (word),
    note                TEXT NOT NULL,
    UNIQUE (rule, size)
) STRICT;
CREATE INDEX counterbore_by_size ON counterbore (size);

-- What a rule adds to head height and washer, by size.
CREATE TABLE depth_addition (
    rule        TEXT NOT NULL,
    size_from   TEXT NOT NULL REFERENCES size (name),
    size_to     TEXT NOT NULL REFERENCES size (name),
    unit        TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    addition_nm INTEGER NOT NULL CONSTRAINT addition CHECK (addition_nm > 0),
    source      TEXT NOT NULL REFERENCES source (id),
    confidence  TEXT NOT NULL REFERENCES confidence (word),
    note        TEXT NOT NULL,
    PRIMARY KEY (rule, size_from)
) STRICT, WITHOUT ROWID;

-- Threads and the drills to tap them.
CREATE TABLE thread (
    id         INTEGER PRIMARY KEY,
    size       TEXT NOT NULL REFERENCES size (name),
    thread     TEXT NOT NULL CONSTRAINT thread CHECK (thread IN ('UNC', 'UNF', 'UNS', 'UNEF', 'BSW', 'BSF', 'BA', 'ISO metric coarse', 'ISO metric fine')),
    pitch      TEXT NOT NULL CONSTRAINT pitch CHECK (CAST(pitch AS REAL) > 0),
    pitch_unit TEXT NOT NULL CONSTRAINT pitch_unit CHECK (pitch_unit IN ('an inch', 'mm')),
    unit       TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    major_nm   INTEGER NOT NULL CONSTRAINT major CHECK (major_nm > 0),
    drill      TEXT NOT NULL REFERENCES drill (name),
    percent    INTEGER CONSTRAINT percent CHECK (percent BETWEEN 50 AND 100),
    printed    TEXT NOT NULL,
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL,
    UNIQUE (size, thread, pitch)
) STRICT;

-- By how much drilled holes come out over the drill, on the average of many.
CREATE TABLE oversize (
    unit       TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    drill_nm   INTEGER PRIMARY KEY CONSTRAINT drill CHECK (drill_nm > 0),
    least_nm   INTEGER NOT NULL CONSTRAINT least CHECK (least_nm > 0),
    mean_nm    INTEGER NOT NULL CONSTRAINT mean CHECK (mean_nm > least_nm),
    most_nm    INTEGER NOT NULL CONSTRAINT most CHECK (most_nm > mean_nm),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL
) STRICT;

-- Tolerances of drilled holes on drawings, and of new drills, by diameter.
CREATE TABLE drill_limit (
    kind       TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('drilled hole', 'new drill')),
    unit       TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    above_nm   INTEGER CONSTRAINT above CHECK (above_nm > 0),
    upto_nm    INTEGER NOT NULL CONSTRAINT upto CHECK (upto_nm > coalesce(above_nm, 0)),
    plus_nm    INTEGER CONSTRAINT plus CHECK (plus_nm > 0),
    minus_nm   INTEGER NOT NULL CONSTRAINT minus CHECK (minus_nm > 0),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL,
    PRIMARY KEY (kind, upto_nm)
) STRICT, WITHOUT ROWID;

-- Counterbores as published: one row a size and pilot, or one a range of sizes. Ranges of the ISO
-- standards leave out their lower limit.
CREATE TABLE tool (
    id                   INTEGER PRIMARY KEY,
    standard             TEXT NOT NULL CONSTRAINT standard CHECK (standard <> ''),
    edition              TEXT NOT NULL,
    kind                 TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('size', 'range', 'scope')),
    size                 TEXT REFERENCES size (name),
    hole                 TEXT NOT NULL CONSTRAINT hole CHECK (hole IN ('', 'nominal', '+1/64', '+1/32', 'fine', 'medium', 'tapping')),
    unit                 TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    cut_dia_nm           INTEGER CONSTRAINT cut_dia CHECK ((cut_dia_nm IS NOT NULL) = (kind = 'size')),
    cut_from_nm          INTEGER CONSTRAINT cut_from CHECK ((cut_from_nm IS NOT NULL) = (kind = 'range')),
    cut_to_nm            INTEGER CONSTRAINT cut_to CHECK ((cut_to_nm IS NOT NULL) = (kind = 'range') AND coalesce(cut_to_nm > cut_from_nm, 1)),
    cut_tolerance        TEXT NOT NULL,
    cut_min_nm           INTEGER CONSTRAINT cut_min CHECK (cut_min_nm > 0),
    cut_max_nm           INTEGER CONSTRAINT cut_max CHECK (cut_max_nm > cut_min_nm),
    pilot_kind           TEXT NOT NULL CONSTRAINT pilot_kind CHECK (pilot_kind IN ('integral', 'removable', 'interchangeable')),
    pilot_dia_nm         INTEGER CONSTRAINT pilot_dia CHECK (pilot_dia_nm > 0 AND pilot_dia_nm < cut_dia_nm),
    pilot_from_nm        INTEGER CONSTRAINT pilot_from CHECK (pilot_from_nm > 0),
    pilot_to_nm          INTEGER CONSTRAINT pilot_to CHECK (pilot_to_nm > pilot_from_nm),
    pilot_tolerance      TEXT NOT NULL,
    pilot_min_nm         INTEGER CONSTRAINT pilot_min CHECK (pilot_min_nm > 0),
    pilot_max_nm         INTEGER CONSTRAINT pilot_max CHECK (pilot_max_nm > pilot_min_nm AND pilot_max_nm < pilot_dia_nm),
    pilot_rule           TEXT NOT NULL,
    bore_nm              INTEGER CONSTRAINT bore CHECK (bore_nm > 0 AND bore_nm < coalesce(cut_dia_nm, cut_to_nm)),
    bore_tolerance       TEXT NOT NULL,
    set_screw            TEXT NOT NULL,
    shank                TEXT NOT NULL,
    shank_dia_nm         INTEGER CONSTRAINT shank_dia CHECK (shank_dia_nm > 0),
    shank_dia_to_nm      INTEGER CONSTRAINT shank_dia_to CHECK (shank_dia_to_nm > shank_dia_nm),
    morse                INTEGER CONSTRAINT morse CHECK (morse BETWEEN 0 AND 6),
    morse_to             INTEGER CONSTRAINT morse_to CHECK (morse_to > morse),
    overall_length_nm    INTEGER CONSTRAINT overall_length CHECK (overall_length_nm > 0),
    overall_length_to_nm INTEGER CONSTRAINT overall_length_to CHECK (overall_length_to_nm > overall_length_nm),
    flute_length_nm      INTEGER CONSTRAINT flute_length CHECK (flute_length_nm > 0 AND flute_length_nm < overall_length_nm),
    flute_length_to_nm   INTEGER CONSTRAINT flute_length_to CHECK (flute_length_to_nm > flute_length_nm),
    shank_length_nm      INTEGER CONSTRAINT shank_length CHECK (shank_length_nm > 0 AND shank_length_nm < overall_length_nm),
    l3_nm                INTEGER CONSTRAINT l3 CHECK (l3_nm > 0),
    l4_nm                INTEGER CONSTRAINT l4 CHECK (l4_nm > 0 AND l4_nm < l3_nm),
    flutes               TEXT NOT NULL,
    source               TEXT NOT NULL REFERENCES source (id),
    confidence           TEXT NOT NULL REFERENCES confidence (word),
    note                 TEXT NOT NULL
) STRICT;

-- Removable pilots as published or as found, and the geometry that binds them to their bodies.
CREATE TABLE pilot (
    id                 INTEGER PRIMARY KEY,
    standard           TEXT NOT NULL CONSTRAINT standard CHECK (standard <> ''),
    kind               TEXT NOT NULL CONSTRAINT kind CHECK (kind IN ('size', 'range', 'rule')),
    size               TEXT REFERENCES size (name),
    hole               TEXT NOT NULL CONSTRAINT hole CHECK (hole IN ('', 'fine', 'medium', 'tapping', 'old medium')),
    unit               TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    cut_dia_nm         INTEGER CONSTRAINT cut_dia CHECK ((cut_dia_nm IS NOT NULL) = (kind = 'size')),
    cut_from_nm        INTEGER CONSTRAINT cut_from CHECK ((cut_from_nm IS NOT NULL) = (kind = 'range')),
    cut_to_nm          INTEGER CONSTRAINT cut_to CHECK ((cut_to_nm IS NOT NULL) = (kind = 'range') AND coalesce(cut_to_nm > cut_from_nm, 1)),
    shank_dia_nm       INTEGER CONSTRAINT shank_dia CHECK (shank_dia_nm > 0),
    shank_dia_to_nm    INTEGER CONSTRAINT shank_dia_to CHECK (shank_dia_to_nm > shank_dia_nm),
    shank_tolerance    TEXT NOT NULL,
    shank_min_nm       INTEGER CONSTRAINT shank_min CHECK (shank_min_nm > 0),
    shank_max_nm       INTEGER CONSTRAINT shank_max CHECK (shank_max_nm > shank_min_nm AND shank_max_nm < shank_dia_nm),
    bore_tolerance     TEXT NOT NULL,
    pilot_dia_nm       INTEGER CONSTRAINT pilot_dia CHECK (pilot_dia_nm > 0 AND pilot_dia_nm < cut_dia_nm),
    pilot_from_nm      INTEGER CONSTRAINT pilot_from CHECK (pilot_from_nm > 0),
    pilot_to_nm        INTEGER CONSTRAINT pilot_to CHECK (pilot_to_nm > pilot_from_nm),
    pilot_tolerance    TEXT NOT NULL,
    pilot_min_nm       INTEGER CONSTRAINT pilot_min CHECK (pilot_min_nm > 0),
    pilot_max_nm       INTEGER CONSTRAINT pilot_max CHECK (pilot_max_nm > pilot_min_nm AND pilot_max_nm < pilot_dia_nm),
    pilot_length_nm    INTEGER CONSTRAINT pilot_length CHECK (pilot_length_nm > 0),
    pilot_length_to_nm INTEGER CONSTRAINT pilot_length_to CHECK (pilot_length_to_nm > pilot_length_nm),
    shank_length_nm    INTEGER CONSTRAINT shank_length CHECK (shank_length_nm > 0),
    shank_length_to_nm INTEGER CONSTRAINT shank_length_to CHECK (shank_length_to_nm > shank_length_nm),
    retention          TEXT NOT NULL,
    set_screw          TEXT NOT NULL,
    set_screw_at       TEXT NOT NULL,
    flat               TEXT NOT NULL,
    source             TEXT NOT NULL REFERENCES source (id),
    confidence         TEXT NOT NULL REFERENCES confidence (word),
    note               TEXT NOT NULL
) STRICT;

-- Feed in lengths per revolution, by class of material and cutter diameter.
CREATE TABLE feed (
    class      TEXT NOT NULL CONSTRAINT class CHECK (class IN ('free', 'general', 'tough')),
    unit       TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    above_nm   INTEGER CONSTRAINT above CHECK (above_nm > 0),
    upto_nm    INTEGER CONSTRAINT upto CHECK (upto_nm > coalesce(above_nm, 0)),
    least_nm   INTEGER NOT NULL CONSTRAINT least CHECK (least_nm > 0),
    most_nm    INTEGER NOT NULL CONSTRAINT most CHECK (most_nm > least_nm),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL,
    UNIQUE (class, above_nm)
) STRICT;

-- Work materials. Speeds are feet a minute for high-speed steel: a drill's, and the range for a
-- counterbore. The pressure is the limit under a head in MPa, lowest to highest of the editions; the
-- confidence is that of the speed. A material that is not to be cut has a name and a family alone.
CREATE TABLE material (
    id                INTEGER PRIMARY KEY,
    name              TEXT NOT NULL UNIQUE,
    condition         TEXT NOT NULL,
    family            TEXT NOT NULL CONSTRAINT family CHECK (family <> ''),
    drill_speed       INTEGER CONSTRAINT drill_speed CHECK (drill_speed BETWEEN 10 AND 1000),
    speed_low         INTEGER CONSTRAINT speed_low CHECK (speed_low > 0),
    speed_high        INTEGER CONSTRAINT speed_high CHECK (speed_high > speed_low AND speed_high < drill_speed),
    feed_class        TEXT CONSTRAINT feed_class CHECK (feed_class IN ('free', 'general', 'tough')),
    coolant           TEXT CONSTRAINT coolant CHECK (coolant <> ''),
    pressure_low_mpa  INTEGER CONSTRAINT pressure_low_mpa CHECK (pressure_low_mpa BETWEEN 5 AND pressure_high_mpa),
    pressure_high_mpa INTEGER CONSTRAINT pressure_high_mpa CHECK (pressure_high_mpa BETWEEN 5 AND 1500),
    pressure_basis    TEXT CONSTRAINT pressure_basis CHECK (pressure_basis <> ''),
    source            TEXT NOT NULL REFERENCES source (id),
    confidence        TEXT NOT NULL REFERENCES confidence (word),
    note              TEXT NOT NULL,
    CONSTRAINT whole CHECK (
        (drill_speed IS NULL) + (speed_low IS NULL) + (speed_high IS NULL) + (feed_class IS NULL)
        + (coolant IS NULL) + (pressure_low_mpa IS NULL) + (pressure_high_mpa IS NULL)
        + (pressure_basis IS NULL) IN (0, 8))
) STRICT;

-- What a family of materials forbids or asks at the machine, the gravest first; 'refused': it is not
-- to be cut at all.
CREATE TABLE restriction (
    id         INTEGER PRIMARY KEY,
    family     TEXT NOT NULL,
    about      TEXT NOT NULL CONSTRAINT about CHECK (
        about IN ('refused', 'fire', 'dwell', 'coolant', 'self-feed', 'heat', 'dust')),
    words      TEXT NOT NULL CONSTRAINT words CHECK (words <> ''),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL,
    UNIQUE (family, about)
) STRICT;

-- Torques of socket head cap screws, as charts print them. Guidance: the joint's designer decides. A
-- chart holds for the surface that it was printed for; empty where it does not say.
CREATE TABLE torque (
    chart       TEXT NOT NULL CONSTRAINT chart CHECK (chart <> ''),
    size        TEXT NOT NULL REFERENCES size (name),
    torque      INTEGER NOT NULL CONSTRAINT torque CHECK (torque BETWEEN 1 AND 2000),
    torque_unit TEXT NOT NULL CONSTRAINT torque_unit CHECK (torque_unit IN ('in-lb', 'ft-lb')),
    surface     TEXT NOT NULL,
    about       TEXT NOT NULL CONSTRAINT about CHECK (about <> ''),
    source      TEXT NOT NULL REFERENCES source (id),
    confidence  TEXT NOT NULL REFERENCES confidence (word),
    note        TEXT NOT NULL,
    PRIMARY KEY (chart, size)
) STRICT, WITHOUT ROWID;

-- Nut factors in thousandths: torque is factor times diameter times force.
CREATE TABLE nut_factor (
    surface    TEXT PRIMARY KEY,
    usual_low  INTEGER NOT NULL CONSTRAINT usual_low CHECK (usual_low BETWEEN seen_low AND usual_high),
    usual_high INTEGER NOT NULL CONSTRAINT usual_high CHECK (usual_high <= seen_high),
    seen_low   INTEGER NOT NULL CONSTRAINT seen_low CHECK (seen_low >= 50),
    seen_high  INTEGER NOT NULL CONSTRAINT seen_high CHECK (seen_high <= 1000),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Keys of hex socket set screws, which hold pilots.
CREATE TABLE set_screw (
    size       TEXT PRIMARY KEY REFERENCES size (name),
    unit       TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    key        TEXT NOT NULL CONSTRAINT key CHECK (key <> '' AND (key LIKE '% mm') = (unit = 'mm')),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL
) STRICT, WITHOUT ROWID;

-- Proof stress of grades of screws, by diameter: over `above` up to `upto`.
CREATE TABLE grade (
    id         INTEGER PRIMARY KEY,
    name       TEXT NOT NULL CONSTRAINT name CHECK (name LIKE standard || ' _%' OR name = standard),
    standard   TEXT NOT NULL CONSTRAINT standard CHECK (standard <> ''),
    unit       TEXT NOT NULL CONSTRAINT unit CHECK (unit IN ('in', 'mm')),
    above_nm   INTEGER CONSTRAINT above CHECK (above_nm > 0),
    upto_nm    INTEGER CONSTRAINT upto CHECK (upto_nm > coalesce(above_nm, 0)),
    proof      INTEGER NOT NULL CONSTRAINT proof CHECK (proof BETWEEN 1 AND 2000),
    proof_unit TEXT NOT NULL CONSTRAINT proof_unit CHECK (proof_unit = iif(unit = 'mm', 'MPa', 'ksi')),
    about      TEXT NOT NULL CONSTRAINT about CHECK (about IN ('proof stress', '0.2 % proof stress')),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL,
    UNIQUE (name, above_nm)
) STRICT;

-- Shop practice: the limits that the fit rules use. The values are read by src/trade/practice.cpp.
CREATE TABLE practice (
    rank       INTEGER PRIMARY KEY CONSTRAINT rank CHECK (rank > 0),
    name       TEXT NOT NULL UNIQUE,
    value      TEXT NOT NULL,
    about      TEXT NOT NULL CONSTRAINT about CHECK (about <> ''),
    source     TEXT NOT NULL REFERENCES source (id),
    confidence TEXT NOT NULL REFERENCES confidence (word),
    note       TEXT NOT NULL
) STRICT;
