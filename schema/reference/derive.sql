-- What follows from the tables: for every head its least diameter, with the note that says how it
-- was found where no table prints one, and its largest, knurled where it may be.
--
-- A head without a published minimum takes its maximum less the spread of the same size in its
-- sister series. Without a row there it takes its maximum less 6 %, rounded down to .0001 in (2540
-- nm) or to a micrometre.
CREATE TABLE head_limit (
    head   INTEGER PRIMARY KEY REFERENCES head (id),
    min_nm INTEGER NOT NULL,
    max_nm INTEGER NOT NULL,
    note   TEXT NOT NULL,
    CHECK (min_nm BETWEEN 1 AND max_nm)
) STRICT;

INSERT INTO head_limit (head, min_nm, max_nm, note)
SELECT head.id,
       CASE
           WHEN head.head_dia_min_nm IS NOT NULL THEN head.head_dia_min_nm
           WHEN other.head_dia_min_nm IS NOT NULL
               THEN head.head_dia_max_nm - (other.head_dia_max_nm - other.head_dia_min_nm)
           WHEN head.unit = 'in' THEN head.head_dia_max_nm * 94 / 100 / 2540 * 2540
           ELSE head.head_dia_max_nm * 94 / 100 / 1000 * 1000
       END,
       coalesce(head.head_dia_knurled_nm, head.head_dia_max_nm),
       CASE
           WHEN head.head_dia_min_nm IS NOT NULL THEN ''
           WHEN other.head_dia_min_nm IS NOT NULL
               THEN 'derived: maximum less the spread of the ' || other.series || ' head'
           ELSE 'derived: maximum less 6 %'
       END
FROM head
JOIN series ON series.name = head.series
LEFT JOIN head AS other ON other.series = series.sister AND other.size = head.size
ORDER BY head.id;
