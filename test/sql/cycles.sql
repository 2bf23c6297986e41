-- What the list of a day knows of each animal: every fact dated before it and, of the day itself, heats, calvings,
-- losses and changed blocks; a service of the day is seen as the heat that it belongs to.
CREATE TABLE seen AS
SELECT live.*, row_number() OVER (PARTITION BY about ORDER BY day, minute, place, seq) AS n
FROM live JOIN list JOIN animal ON animal.animal = about
WHERE kind <> 'animal'
  AND (day < today OR (day = today AND kind IN ('heat', 'calving', 'loss', 'block', 'service')));
CREATE INDEX seen_by_kind ON seen (kind);
CREATE INDEX seen_by_animal ON seen (about, kind, n);

-- Calvings a day or less apart are one.
CREATE TABLE calving AS
WITH told AS (
    SELECT about AS animal, n, day, body, iif(day - lag(day) OVER (PARTITION BY about ORDER BY n) <= 1, 0, 1) AS opens
    FROM seen WHERE kind = 'calving'
  ),
  numbered AS (SELECT *, sum(opens) OVER (PARTITION BY animal ORDER BY n) AS calving FROM told)
SELECT animal, calving, min(n) AS n, min(day) AS day, max(day) AS last_day,
  sum(coalesce(body ->> '$.calves', 1)) >= 2 OR max(coalesce(body ->> '$.ease', 1)) >= 4
    OR max(coalesce(body ->> '$.dead', 0)) > 0 AS hard
FROM numbered GROUP BY animal, calving;
CREATE INDEX calving_by_animal ON calving (animal, calving);

-- A calving or a loss opens a cycle; so are losses a day or less apart one.
CREATE TABLE cycle AS
WITH opener AS (
    SELECT animal, n, day, 'calving' AS event FROM calving
    UNION ALL SELECT about, n, day, 'loss' FROM seen WHERE kind = 'loss'
  ),
  marked AS (
    SELECT *, event = 'loss' AND lag(event) OVER w = 'loss' AND day - lag(day) OVER w <= 1 AS same
    FROM opener WINDOW w AS (PARTITION BY animal ORDER BY n)
  ),
  opened AS (
    SELECT animal, 0 AS n, NULL AS day, NULL AS event FROM animal
    UNION ALL SELECT animal, n, day, event FROM marked WHERE same IS NOT TRUE
  )
SELECT animal, row_number() OVER w AS cycle, n, day AS opened, event,
  lead(n) OVER w AS next_n, lead(day) OVER w AS next_opened,
  (SELECT lactation FROM animal WHERE animal.animal = opened.animal)
    + sum(coalesce(event, '') = 'calving') OVER (PARTITION BY animal ORDER BY n) AS parity
FROM opened WINDOW w AS (PARTITION BY animal ORDER BY n);
CREATE INDEX cycle_by_animal ON cycle (animal, n);

CREATE TABLE event AS
SELECT about AS animal, seen.n, cycle, parity, day, minute, kind, body, id,
  kind = 'service' AND day < today AS served, coalesce(body ->> '$.natural', 0) AS natural
FROM seen JOIN list JOIN cycle ON cycle.animal = about AND seen.n > cycle.n AND seen.n < coalesce(next_n, 1e9)
WHERE kind IN ('heat', 'service', 'check');

-- Heat records and services each at most one day after the one before are one heat.
CREATE TABLE record AS
WITH marked AS (
  SELECT *, kind = 'service' OR body ->> '$.certainty' = 'sure' AS sure,
    iif(day - lag(day) OVER (PARTITION BY animal, cycle ORDER BY n) <= 1, 0, 1) AS opens
  FROM event WHERE kind IN ('heat', 'service')
)
SELECT *, sum(opens) OVER (PARTITION BY animal, cycle ORDER BY n) AS heat FROM marked;
CREATE INDEX record_by_heat ON record (animal, cycle, heat, n);

-- Its moment and day are those of its first sure record (a service only where the heat is older than a day), else of
-- the first, or of every other day that the suspicion goes on; its services are one, on their last day, by AI if any of
-- them is.
CREATE TABLE heat AS
WITH sured AS (
    SELECT *, min(iif(sure, n, NULL)) OVER w AS first_sure FROM record WINDOW w AS (PARTITION BY animal, cycle, heat)
  ),
  suspected AS (
    SELECT *, min(day) OVER w + (max(iif(n < coalesce(first_sure, 1e9), day, NULL)) OVER w - min(day) OVER w) / 2 * 2
      AS suspect_on, max(iif(n = first_sure, iif(kind = 'heat', 1e9, day), NULL)) OVER w AS sure_from
    FROM sured WINDOW w AS (PARTITION BY animal, cycle, heat)
  )
SELECT animal, cycle, heat, parity, day, minute, iif(kind = 'heat', body ->> '$.how', NULL) AS how,
  body ->> '$.time' AS time,
  max(sure) OVER w AS sure, min(iif(sure, day, NULL)) OVER w AS sure_on,
  max(iif(served, day, NULL)) OVER w AS service_day, max(iif(served, NOT natural, NULL)) OVER w AS ai,
  last_value(day) OVER w AS last_day,
  n = iif(sure_from - suspect_on > 1 OR suspect_on IS NULL, first_sure,
      min(iif(day = suspect_on AND NOT sure, n, NULL)) OVER w) AS tells
FROM suspected
WINDOW w AS (PARTITION BY animal, cycle, heat ORDER BY n ROWS BETWEEN UNBOUNDED PRECEDING AND UNBOUNDED FOLLOWING);
DELETE FROM heat WHERE NOT tells;
CREATE INDEX heat_by_cycle ON heat (animal, cycle, heat);

-- The sire is the last AI's, else the last service's.
CREATE TABLE service AS
SELECT animal, cycle, heat, parity, service_day AS day, ai,
  (SELECT body ->> '$.sire' FROM record WHERE record.animal = heat.animal AND record.cycle = heat.cycle
     AND record.heat = heat.heat AND served ORDER BY natural, n DESC LIMIT 1) AS sire
FROM heat WHERE service_day IS NOT NULL;
CREATE INDEX service_by_cycle ON service (animal, cycle, heat);

-- A check counts for a service made so many days before it.
CREATE TABLE "check" AS
SELECT animal, cycle, n, parity, day, body ->> '$.result' AS result, body ->> '$.foetalAge' AS age,
  CAST(julianday(body ->> '$.serviceDate') - 2440587.5 AS INTEGER) AS service_on,
  CASE body ->> '$.method' WHEN 'ultrasound' THEN iif(parity = 0, ultrasound_maiden, ultrasound) WHEN 'hand' THEN hand
    ELSE milk_or_blood END AS counts_from
FROM event JOIN rule WHERE kind = 'check';
CREATE INDEX check_by_cycle ON "check" (animal, cycle, n);
