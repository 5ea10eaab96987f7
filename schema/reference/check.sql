/* The last checks over all the tables together. Each query stands under its name and must find no
   row; the build stops with the name and the first row it finds. Limits of a size are in nanometres:
   15240 is .0006 in, the most that printed thousandths are off; 6000 is .006 mm. */

-- a screw is not over its size, nor 3 % under
SELECT head.series, head.size FROM head JOIN size ON size.name = head.size
WHERE head.screw_dia_nm NOT BETWEEN size.diameter_nm * 97 / 100 AND size.diameter_nm + 100;

-- a shoulder is thicker than its thread, and only shoulder screws have a thread of their own
SELECT head.series, head.size FROM head JOIN series ON series.name = head.series
LEFT JOIN size ON size.name = head.thread
WHERE (series.form = 'shoulder') <> (head.thread IS NOT NULL)
   OR size.diameter_nm >= head.screw_dia_nm;

-- a series has one unit
SELECT series FROM head GROUP BY series HAVING count(DISTINCT unit) > 1;

-- heads of a series grow with the screw
SELECT * FROM (
    SELECT head.series, head.size, head_dia_max_nm, head_height_max_nm, drive_size_nm,
           lag(head_dia_max_nm) OVER w AS head_before, lag(head_height_max_nm) OVER w AS height_before,
           lag(drive_size_nm) OVER w AS drive_before
    FROM head JOIN size ON size.name = head.size
    WINDOW w AS (PARTITION BY head.series ORDER BY size.diameter_nm))
WHERE head_dia_max_nm <= head_before OR head_height_max_nm < height_before
   OR drive_size_nm < drive_before;

-- least heads and heights grow with the screw, but for the 3/8 and 7/16 fillister machine screws
SELECT * FROM (
    SELECT head.series, head.size, head_dia_min_nm, head_height_min_nm,
           lag(head_dia_min_nm) OVER w AS head_before, lag(head_height_min_nm) OVER w AS height_before
    FROM head JOIN size ON size.name = head.size
    WINDOW w AS (PARTITION BY head.series ORDER BY size.diameter_nm))
WHERE (head_dia_min_nm <= head_before OR head_height_min_nm < height_before)
  AND NOT (series = 'ASME B18.6.3 fillister' AND size = '7/16');

-- hexagon corners are the flats over cos 30
SELECT series, size, head_dia_max_nm, drive_size_nm FROM head
JOIN series AS of_form ON of_form.name = head.series
WHERE of_form.form = 'hex cap'
  AND abs(head_dia_max_nm - drive_size_nm * 1.1547005) > iif(unit = 'in', 15240, 6000);

-- a flange is over the corners of its hexagon
SELECT series, size FROM head JOIN series AS of_form ON of_form.name = head.series
WHERE of_form.form = 'hex flange' AND head_dia_max_nm <= drive_size_nm * 1.1547005;

-- a hexagon's least corners are over its flats
SELECT series, size FROM head JOIN head_limit ON head_limit.head = head.id
WHERE drive = 'hex' AND min_nm <= drive_size_nm;

-- a plain socket head is as high as the screw is thick
SELECT head.series, head.size FROM head
JOIN series ON series.name = head.series JOIN size ON size.name = head.size
WHERE series.form = 'socket head cap' AND abs(head_height_max_nm - size.diameter_nm) > 15240;

-- a 1960 head from 1/4 up is one and a half times the screw
SELECT series, size FROM head
WHERE series = 'ASME B18.3 1960' AND screw_dia_nm >= 6350000
  AND abs(head_dia_max_nm * 2 - screw_dia_nm * 3) > 50800;

-- a socket's key is thinner than the screw
SELECT series, size FROM head WHERE drive = 'hex socket' AND drive_size_nm >= screw_dia_nm;

-- only recesses have a number, and only they and plain cross recesses have no size
SELECT series, size FROM head
WHERE (recess <> '' AND drive NOT IN ('hexalobular', 'cross recess'))
   OR (drive IN ('hex socket', 'slot', 'hex') AND drive_size_nm IS NULL);

-- a minimum taken from the sister series is one of the same form and unit
SELECT series.name FROM series JOIN series AS other ON other.name = series.sister
WHERE other.form <> series.form
   OR (SELECT min(unit) FROM head WHERE series = series.name)
      <> (SELECT min(unit) FROM head WHERE series = other.name);

-- derived least heads are over the screw and under the head
SELECT head.series, head.size FROM head_limit JOIN head ON head.id = head_limit.head
WHERE min_nm <= head.screw_dia_nm OR min_nm >= max_nm;

-- every form but the countersunk ones has a series, and a word; every series heads and words
SELECT form.name FROM form
WHERE NOT EXISTS (SELECT 1 FROM series WHERE form = form.name) <> (form.name = 'countersunk')
   OR NOT EXISTS (SELECT 1 FROM form_word WHERE form = form.name)
UNION ALL
SELECT series.name FROM series
WHERE NOT EXISTS (SELECT 1 FROM head WHERE series = series.name)
   OR NOT EXISTS (SELECT 1 FROM series_word WHERE series = series.name);

-- no word names both a form and a series
SELECT word FROM form_word JOIN series_word USING (word);

-- within a form and a unit a word names one series
SELECT series_word.word, series.form, count(*) AS series_named FROM series_word
JOIN series ON series.name = series_word.series
GROUP BY series_word.word, series.form, (SELECT min(unit) FROM head WHERE head.series = series.name)
HAVING count(*) > 1;

-- clearance holes are over the screw and grow: close, normal, loose
SELECT clearance.system, clearance.size FROM clearance
JOIN size ON size.name = clearance.size
LEFT JOIN drill AS close ON close.name = clearance.close
LEFT JOIN drill AS normal ON normal.name = clearance.normal
LEFT JOIN drill AS loose ON loose.name = clearance.loose
WHERE coalesce(close.diameter_nm, normal.diameter_nm) <= size.diameter_nm
   OR normal.diameter_nm <= close.diameter_nm OR loose.diameter_nm <= normal.diameter_nm
   OR close_max_nm < close.diameter_nm OR normal_max_nm < normal.diameter_nm
   OR loose_max_nm < loose.diameter_nm;

-- clearance holes of a system grow with the screw
SELECT * FROM (
    SELECT clearance.system, clearance.size, drill.diameter_nm,
           lag(drill.diameter_nm) OVER (PARTITION BY clearance.system ORDER BY size.diameter_nm) AS hole_before
    FROM clearance JOIN size ON size.name = clearance.size JOIN drill ON drill.name = clearance.normal)
WHERE diameter_nm <= hole_before;

-- no two drills of a kind are the same
SELECT kind, diameter_nm FROM drill GROUP BY kind, diameter_nm HAVING count(*) > 1;

-- the metric index is 1 to 13 by .1, to 32 by .5, to 80 by 1
SELECT count(*), sum(diameter_nm) FROM drill WHERE kind = 'metric' AND in_index
HAVING count(*) <> 121 + 38 + 48
    OR sum(diameter_nm) <> 121 * 7000000 + 38 * 22750000 + 48 * 56500000;

-- washers go over the screw and grow with it, but for 3/16, whose washer is larger than that of #10
SELECT * FROM (
    SELECT washer.series, washer.size, inside_dia_nm, outside_dia_max_nm, thickness_max_nm,
           size.diameter_nm, lag(inside_dia_nm) OVER w AS inside_before,
           lag(outside_dia_max_nm) OVER w AS outside_before
    FROM washer JOIN size ON size.name = washer.size
    WHERE washer.size <> '3/16'
    WINDOW w AS (PARTITION BY washer.series ORDER BY size.diameter_nm, inside_dia_nm))
WHERE inside_dia_nm < diameter_nm OR inside_dia_nm < inside_before OR outside_dia_max_nm < outside_before;

-- a counterbore takes every head that it is for
SELECT counterbore.rule, counterbore.size, head.series FROM counterbore
JOIN counterbore_head ON counterbore_head.rule = counterbore.rule
JOIN head ON head.series = counterbore_head.series AND head.size = counterbore.size
JOIN head_limit ON head_limit.head = head.id
WHERE counterbore.diameter_nm <= head_limit.max_nm;

-- a counterbore was worked out for the head in the table
SELECT counterbore.rule, counterbore.size, head_nm, head_dia_max_nm FROM counterbore
JOIN counterbore_head ON counterbore_head.rule = counterbore.rule
JOIN head ON head.series = counterbore_head.series AND head.size = counterbore.size
WHERE abs(head_nm - head_dia_max_nm) > 25400;

-- counterbores of a rule do not shrink as the screw grows
SELECT * FROM (
    SELECT counterbore.rule, counterbore.size, counterbore.diameter_nm,
           lag(counterbore.diameter_nm) OVER (PARTITION BY rule ORDER BY size.diameter_nm) AS before
    FROM counterbore JOIN size ON size.name = counterbore.size)
WHERE diameter_nm < before;

-- drills of a counterbore are over the screw and grow: close, normal
SELECT counterbore.rule, counterbore.size FROM counterbore
JOIN size ON size.name = counterbore.size
LEFT JOIN drill AS close ON close.name = counterbore.close
LEFT JOIN drill AS normal ON normal.name = counterbore.normal
WHERE close.diameter_nm <= size.diameter_nm OR normal.diameter_nm <= close.diameter_nm
   OR normal.diameter_nm >= counterbore.diameter_nm OR edge_countersink_nm <= size.diameter_nm;

-- every rule has counterbores, and heads or a washer
SELECT name FROM counterbore_rule
WHERE NOT EXISTS (SELECT 1 FROM counterbore WHERE rule = name)
   OR (washer IS NULL) <> EXISTS (SELECT 1 FROM counterbore_head WHERE rule = name);

-- DIN 974-1 adds to the depth what its table says
SELECT counterbore.rule, counterbore.size FROM counterbore
JOIN size ON size.name = counterbore.size
WHERE counterbore.rule LIKE 'DIN 974-1 %' AND NOT EXISTS (
    SELECT 1 FROM depth_addition
    JOIN size AS least ON least.name = size_from JOIN size AS most ON most.name = size_to
    WHERE depth_addition.rule = 'DIN 974-1' AND size.diameter_nm BETWEEN least.diameter_nm AND most.diameter_nm
      AND addition_nm = depth_addition_nm);

-- a thread's major diameter is its size, and its tap drill is under it by half to one thread
SELECT thread.size, thread.thread FROM thread
JOIN size ON size.name = thread.size JOIN drill ON drill.name = thread.drill
WHERE thread.major_nm <> size.diameter_nm
   OR drill.diameter_nm NOT BETWEEN major_nm * 70 / 100 AND major_nm * 97 / 100;

-- the percentage of a unified thread is that of its drill
SELECT thread.size, thread.thread, percent FROM thread JOIN drill ON drill.name = thread.drill
WHERE thread.thread LIKE 'UN%'
  AND abs((major_nm - drill.diameter_nm) * CAST(pitch AS REAL) / 25400000 / 1.299 * 100 - percent) > 1;

-- a metric tap drill is near the size less the pitch
SELECT thread.size FROM thread JOIN drill ON drill.name = thread.drill
WHERE thread.thread LIKE 'ISO metric %'
  AND abs(major_nm - CAST(pitch AS REAL) * 1000000 - drill.diameter_nm) > 100000;

-- fine pitches are finer than the coarse one
SELECT fine.size, fine.pitch FROM thread AS fine
JOIN thread AS coarse ON coarse.size = fine.size AND coarse.thread = 'ISO metric coarse'
WHERE fine.thread = 'ISO metric fine' AND CAST(fine.pitch AS REAL) >= CAST(coarse.pitch AS REAL);

-- threads and pitches of heads are threads of their size
SELECT head.series, head.size, head.coarse, head.fine FROM head
WHERE head.unit = 'mm'
  AND NOT EXISTS (SELECT 1 FROM thread WHERE thread.size = coalesce(head.thread, head.size) AND pitch = head.coarse)
  AND head.size NOT IN ('M1', 'M1.2', 'M1.4');

-- oversize does not shrink as the drill grows
SELECT * FROM (
    SELECT drill_nm, least_nm, mean_nm, most_nm, lag(mean_nm) OVER w AS mean_before, lag(most_nm) OVER w AS most_before
    FROM oversize WINDOW w AS (ORDER BY drill_nm))
WHERE mean_nm < mean_before OR most_nm < most_before;

-- bands of feeds and drill limits follow on each other
SELECT * FROM (
    SELECT class AS name, above_nm, lag(upto_nm) OVER (PARTITION BY class ORDER BY coalesce(above_nm, 0)) AS before FROM feed
    UNION ALL
    SELECT kind, above_nm, lag(upto_nm) OVER (PARTITION BY kind ORDER BY upto_nm) FROM drill_limit)
WHERE before IS NOT NULL AND above_nm IS NOT before;

-- torques of a chart grow with the screw
SELECT * FROM (
    SELECT chart, torque.size, torque, torque_unit,
           lag(torque * iif(torque_unit = 'ft-lb', 12, 1)) OVER (PARTITION BY chart ORDER BY diameter_nm) AS before
    FROM torque JOIN size ON size.name = torque.size)
WHERE torque * iif(torque_unit = 'ft-lb', 12, 1) <= before;

-- a chart's surface has nut factors
SELECT chart, surface FROM torque
WHERE surface <> '' AND NOT EXISTS (SELECT 1 FROM nut_factor WHERE nut_factor.surface = torque.surface);

-- bands of a grade follow on each other, from the smallest screw on
SELECT * FROM (
    SELECT name, above_nm, lag(upto_nm) OVER (PARTITION BY name ORDER BY coalesce(above_nm, 0)) AS before FROM grade)
WHERE above_nm IS NOT before;

-- the proof stress of an ISO 898-1 class is 88 to 97 % of the yield stress that its name says
SELECT name, proof, tenths FROM (
    SELECT name, proof, CAST(round(10 * CAST(substr(name, 11) AS REAL)) AS INTEGER) AS tenths
    FROM grade WHERE standard = 'ISO 898-1')
WHERE proof NOT BETWEEN 0.88 * (tenths / 10 * (tenths % 10) * 10) AND 0.97 * (tenths / 10 * (tenths % 10) * 10);

-- every class of material has feeds for every cutter
SELECT name FROM material
WHERE feed_class IS NOT NULL AND (SELECT count(*) FROM feed WHERE class = feed_class) <> 4;

-- a material has speeds, or its family is refused
SELECT name FROM material
WHERE (drill_speed IS NULL) IS NOT (family IN (SELECT family FROM restriction WHERE about = 'refused'));

-- a restriction is of a family that there is
SELECT family FROM restriction WHERE family NOT IN (SELECT family FROM material);

-- an everyday name leads to a material
SELECT name, value FROM practice
WHERE name LIKE 'material %' AND value NOT IN (SELECT name FROM material);

-- the handbook's tool is .014 or .015 over a fillister head to #12, 1/32 over a cap head from 1/4
SELECT tool.size, tool.cut_dia_nm, head.head_dia_max_nm FROM tool
JOIN size ON size.name = tool.size
JOIN head ON head.size = tool.size
 AND head.series = iif(size.system = 'number', 'ASME B18.6.3 fillister', 'ASME B18.3 1960')
WHERE tool.standard LIKE 'Machinery%'
  AND abs(cut_dia_nm - head_dia_max_nm - iif(size.system = 'number', 368300, 793750)) > 15240;

-- a tool's pilot is not under the screw by more than its own allowance
SELECT tool.standard, tool.size, tool.hole FROM tool JOIN size ON size.name = tool.size
WHERE tool.hole <> 'tapping' AND tool.pilot_dia_nm < size.diameter_nm;

-- every source is used
SELECT id FROM source
EXCEPT SELECT source FROM (
    SELECT source FROM size UNION SELECT source FROM head UNION SELECT source FROM washer
    UNION SELECT source FROM drill UNION SELECT source FROM clearance UNION SELECT source FROM counterbore
    UNION SELECT source FROM depth_addition UNION SELECT source FROM thread UNION SELECT source FROM oversize
    UNION SELECT source FROM drill_limit UNION SELECT source FROM tool UNION SELECT source FROM pilot
    UNION SELECT source FROM feed UNION SELECT source FROM material UNION SELECT source FROM restriction UNION SELECT source FROM practice
    UNION SELECT source FROM torque UNION SELECT source FROM nut_factor UNION SELECT source FROM grade UNION SELECT source FROM set_screw);
