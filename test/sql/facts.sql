-- The facts of a herd as tables: what counts, the farm, its settings, its seasons, its animals.
-- `fact` holds one row a fact in the order of recording; `body` is the fact as it stands in the file.

-- A correction voids what it names, unless a later correction voids it: so they are gone through from the last.
CREATE TABLE voided AS
WITH RECURSIVE
  back (step, id, voids) AS (
    SELECT row_number() OVER (ORDER BY seq DESC), id, body ->> '$.voids' FROM fact WHERE kind = 'correction'
  ),
  walk (step, gone) AS (
    SELECT 0, '|'
    UNION ALL
    SELECT back.step, iif(instr(gone, '|' || back.id || '|') > 0, gone, gone || back.voids || '|')
    FROM walk JOIN back ON back.step = walk.step + 1
  ),
  voids (gone) AS (SELECT gone FROM walk ORDER BY step DESC LIMIT 1)
SELECT id FROM fact JOIN voids ON instr(gone, '|' || id || '|') > 0;

CREATE TABLE farm AS
SELECT body ->> '$.milkings[0]' AS morning, coalesce(body ->> '$.milkings[1]', body ->> '$.milkings[0]') AS evening,
  json_array_length(body, '$.milkings') AS milkings
FROM fact WHERE kind = 'farm' AND id NOT IN (SELECT id FROM voided) ORDER BY seq DESC LIMIT 1;

-- A moment counts from its own time, from the day's first milking (`morning`, or nothing) or from its last (`evening`).
-- At one moment a calving comes before a heat, a service, a check and a loss; a bar before it is lifted.
CREATE TABLE live AS
WITH told AS (
  SELECT fact.*, CASE coalesce(time, 'morning') WHEN 'morning' THEN morning WHEN 'evening' THEN evening ELSE time END AS clock
  FROM fact LEFT JOIN farm
  WHERE kind <> 'correction' AND id NOT IN (SELECT id FROM voided)
)
SELECT seq, id, kind, about, body, CAST(julianday(date) - 2440587.5 AS INTEGER) AS day,
  CAST(substr(clock, 1, 2) AS INTEGER) * 60 + CAST(substr(clock, 4, 2) AS INTEGER) AS minute,
  CASE kind WHEN 'calving' THEN 1 WHEN 'heat' THEN 2 WHEN 'service' THEN 3 WHEN 'check' THEN 4 WHEN 'loss' THEN 5
    WHEN 'bar' THEN 6 WHEN 'unbar' THEN 7 WHEN 'with-bull' THEN 8 WHEN 'from-bull' THEN 9 ELSE 0 END AS place
FROM told;
CREATE INDEX live_by_kind ON live (kind);

CREATE TABLE animal AS
SELECT about AS animal, body ->> '$.number' AS number, body ->> '$.sex' AS sex, body ->> '$.block' AS block,
  CAST(julianday(body ->> '$.born') - 2440587.5 AS INTEGER) AS born, coalesce(body ->> '$.lactation', 0) AS lactation,
  coalesce(body ->> '$.ready', 0) AS ready, body ->> '$.sire' AS sire, body ->> '$.dam' AS dam,
  body ->> '$.breed' AS breed, body ->> '$.gestationDays' AS gestation, body ->> '$.internationalId' AS international
FROM live WHERE kind = 'animal' AND seq IN (SELECT max(seq) FROM live WHERE kind = 'animal' GROUP BY about);
CREATE INDEX animal_by_id ON animal (animal);
CREATE INDEX animal_by_number ON animal (number);
CREATE INDEX animal_by_international ON animal (international);

-- What the farm can change, with what counts where it has not.
CREATE TABLE policy AS
WITH standard (name, value) AS (
    VALUES ('chances', 2), ('calvedToServe', 42), ('calvedNever', 30), ('watchFrom', 18), ('watchTo', 24),
      ('shortIntervalFrom', 2), ('checkMethod', 'ultrasound'), ('ultrasoundDays', 30), ('ultrasoundMaidenDays', 28),
      ('handDays', 42), ('milkOrBloodDays', 30), ('milkOrBloodCalvedDays', 60), ('unsureRecheckDays', 14),
      ('confirmDays', 60), ('finalCheckDays', 42), ('overdueDays', 14), ('lossIsCalvingDays', 120), ('dryOffDays', 60),
      ('defaultGestation', 282), ('servingTime', 'at-next-milking')
  ),
  own (name, value, latest) AS (
    SELECT one.key, one.value, max(seq) FROM live, json_each(body, '$.set') AS one WHERE kind = 'policy' GROUP BY one.key
  ),
  setting AS (SELECT name, coalesce(own.value, standard.value) AS value FROM standard LEFT JOIN own USING (name))
SELECT json_group_object(name, value) AS settings FROM setting;

CREATE VIEW rule AS
SELECT settings ->> '$.chances' AS chances, settings ->> '$.calvedToServe' AS to_serve,
  settings ->> '$.calvedNever' AS never, settings ->> '$.watchFrom' AS watch_from, settings ->> '$.watchTo' AS watch_to,
  settings ->> '$.shortIntervalFrom' AS short_from, settings ->> '$.checkMethod' AS method,
  settings ->> '$.ultrasoundDays' AS ultrasound, settings ->> '$.ultrasoundMaidenDays' AS ultrasound_maiden,
  settings ->> '$.handDays' AS hand, settings ->> '$.milkOrBloodDays' AS milk_or_blood,
  settings ->> '$.milkOrBloodCalvedDays' AS milk_or_blood_calved, settings ->> '$.unsureRecheckDays' AS recheck,
  settings ->> '$.confirmDays' AS confirm, settings ->> '$.finalCheckDays' AS final,
  settings ->> '$.overdueDays' AS overdue, settings ->> '$.lossIsCalvingDays' AS loss_is_calving,
  settings ->> '$.dryOffDays' AS dry_off, settings ->> '$.defaultGestation' AS gestation,
  settings ->> '$.servingTime' AS serving_time
FROM policy;

-- Season day 0, the last day of AI, the last of the bull, as days; the scanning visits beside.
CREATE TABLE season AS
WITH told AS (
  SELECT seq, body ->> '$.block' AS block, CAST(julianday(body ->> '$.matingStart') - 2440587.5 AS INTEGER) AS start,
    7 * (body ->> '$.aiWeeks') - 1 AS ai, 7 * (body ->> '$.bullWeeks') AS bull, body
  FROM live WHERE kind = 'season'
)
SELECT block, start, start + ai AS ai_end, start + ai + bull AS bull_end, body ->> '$.scanDates' AS scans
FROM told WHERE seq IN (SELECT max(seq) FROM told GROUP BY block, start);

CREATE TABLE visit AS
SELECT DISTINCT block, start, CAST(julianday(one.value) - 2440587.5 AS INTEGER) AS day FROM season, json_each(scans) AS one;

-- What is known of a sire by his code: his own record, else the last stock-take that tells it.
CREATE TABLE sire AS
WITH code (code) AS (
  SELECT DISTINCT body ->> '$.sire' FROM live WHERE kind IN ('service', 'stock-take')
  UNION SELECT DISTINCT body ->> '$.bull' FROM live WHERE kind = 'with-bull'
),
own AS (
  SELECT code, (SELECT animal FROM animal WHERE number = code UNION ALL SELECT animal FROM animal WHERE international = code LIMIT 1) AS animal
  FROM code
)
SELECT code,
  coalesce((SELECT breed FROM animal WHERE animal.animal = own.animal),
    (SELECT body ->> '$.breed' FROM live WHERE kind = 'stock-take' AND body ->> '$.sire' = code AND body ->> '$.breed' IS NOT NULL
     ORDER BY day DESC, seq DESC LIMIT 1)) AS breed,
  coalesce((SELECT gestation FROM animal WHERE animal.animal = own.animal),
    (SELECT body ->> '$.gestationDays' FROM live WHERE kind = 'stock-take' AND body ->> '$.sire' = code
       AND body ->> '$.gestationDays' IS NOT NULL ORDER BY day DESC, seq DESC LIMIT 1)) AS gestation
FROM own WHERE code IS NOT NULL;

-- Days of gestation by the sire's breed; a maiden dam of a Holstein-Friesian calf has her own figure.
CREATE TABLE gestation (breed TEXT, days INTEGER, maiden INTEGER);
INSERT INTO gestation VALUES
  ('holstein-friesian', 280, 278), ('jersey', 280, 280), ('ayrshire', 282, 282), ('brown swiss', 287, 287),
  ('angus', 282, 282), ('hereford', 285, 285), ('simmental', 286, 286), ('belgian blue', 285, 285),
  ('charolais', 288, 288), ('limousin', 287, 287);

CREATE TABLE spelled (breed TEXT, name TEXT);
INSERT INTO spelled
SELECT breed, breed FROM gestation
UNION ALL VALUES ('holstein-friesian', 'holstein'), ('holstein-friesian', 'friesian'), ('holstein-friesian', 'ho'),
  ('angus', 'aberdeen angus'), ('angus', 'aa'), ('jersey', 'je'), ('belgian blue', 'bb'), ('charolais', 'ch'),
  ('limousin', 'li'), ('hereford', 'he'), ('simmental', 'si');
