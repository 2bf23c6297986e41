-- In calf: a pregnant result of the cycle with no later empty one. Where, when and by whom she conceived.

-- A bull is with her from one fact to the next that ends it: one that names no bull ends all, else his.
CREATE TABLE own_bull AS
WITH told AS (
  SELECT about AS animal, n, day, kind, body ->> '$.bull' AS bull FROM seen WHERE kind IN ('with-bull', 'from-bull')
)
SELECT animal, n, day AS began, bull,
  (SELECT min(gone.day) FROM told AS gone WHERE gone.animal = came.animal AND gone.kind = 'from-bull' AND gone.n > came.n
     AND (gone.bull IS NULL OR came.bull IS NULL OR gone.bull = came.bull)) AS ended
FROM told AS came WHERE kind = 'with-bull';
CREATE INDEX own_bull_by_animal ON own_bull (animal);

-- Her block: the one she was moved to, else the one stated, else that of the first season whose last bull day lies
-- 42 days or more after her last calving.
CREATE TABLE her_block AS
SELECT animal.animal, coalesce(
  (SELECT body ->> '$.block' FROM seen WHERE about = animal.animal AND kind = 'block' ORDER BY n DESC LIMIT 1),
  animal.block,
  (SELECT season.block FROM season, rule
   WHERE bull_end - (SELECT max(calving.day) FROM calving WHERE calving.animal = animal.animal) >= to_serve
   ORDER BY start, season.block LIMIT 1)) AS block
FROM animal;

-- Bull periods of a cycle: her own, and where she has none the bull weeks of her block.
CREATE TABLE bull_period AS
WITH own AS (
    SELECT cycle.animal, cycle, max(began, coalesce(opened, -1e9)) AS began, ended, bull FROM cycle JOIN list
    JOIN own_bull ON own_bull.animal = cycle.animal AND coalesce(ended, today) >= coalesce(opened, -1e9)
      AND began < coalesce(next_opened, 1e9)
  ),
  weeks AS (
    SELECT cycle.animal, cycle, max(ai_end + 1, coalesce(opened, -1e9)) AS began, bull_end AS ended, NULL AS bull FROM cycle
    JOIN her_block ON her_block.animal = cycle.animal
    JOIN season ON season.block = her_block.block AND bull_end > ai_end
      AND bull_end >= coalesce(opened, -1e9) AND ai_end + 1 < coalesce(next_opened, 1e9)
  )
SELECT * FROM own
UNION ALL SELECT * FROM weeks WHERE NOT EXISTS (SELECT 1 FROM own WHERE own.animal = weeks.animal AND own.cycle = weeks.cycle);
CREATE INDEX bull_period_by_cycle ON bull_period (animal, cycle);

-- Pregnant results with no empty one after them, in order.
CREATE TABLE pregnant AS
SELECT *, row_number() OVER (PARTITION BY animal, cycle ORDER BY n) AS place
FROM "check" AS one
WHERE result = 'pregnant' AND NOT EXISTS (
  SELECT 1 FROM "check" AS later WHERE later.animal = one.animal AND later.cycle = one.cycle
    AND later.n > one.n AND later.result = 'empty');

-- What each of them tells by itself.
CREATE TABLE told_conception AS
WITH named AS (
    SELECT pregnant.*, day - age AS back, iif(age > 98, 15, 7) AS within,
      (SELECT heat FROM record WHERE record.animal = pregnant.animal AND record.cycle = pregnant.cycle AND served
         AND record.day = service_on) AS by_name
    FROM pregnant
  ),
  served AS (
    SELECT *, iif(service_on IS NOT NULL, by_name,
      iif(age IS NOT NULL,
        (SELECT heat FROM service WHERE service.animal = named.animal AND service.cycle = named.cycle
           AND abs(service.day - back) <= within AND service.day <= named.day
         ORDER BY abs(service.day - back), service.day DESC LIMIT 1),
        coalesce(
          (SELECT max(heat) FROM service WHERE service.animal = named.animal AND service.cycle = named.cycle
             AND named.day - service.day >= counts_from),
          (SELECT max(heat) FROM service WHERE service.animal = named.animal AND service.cycle = named.cycle
             AND named.day - service.day >= 24)))) AS by_service
    FROM named
  ),
  bulled AS (
    SELECT served.*, period.began, period.ended, period.bull FROM served LEFT JOIN bull_period AS period
    ON by_service IS NULL AND service_on IS NULL AND period.rowid = (
      SELECT fits.rowid FROM bull_period AS fits
      WHERE fits.animal = served.animal AND fits.cycle = served.cycle AND fits.began <= served.day
        AND iif(age IS NOT NULL, back BETWEEN fits.began - 15 AND coalesce(fits.ended, 1e9) + 15,
          served.day - fits.began >= 24)
      ORDER BY iif(age IS NULL, 0, max(fits.began - back, back - coalesce(fits.ended, 1e9), 0)), fits.began DESC LIMIT 1)
  )
SELECT animal, cycle, bulled.n, place, bulled.day, service_on IS NULL AND age IS NULL AS plain, service_on, back,
  (SELECT day FROM service WHERE service.animal = bulled.animal AND service.cycle = bulled.cycle
     AND heat = by_service) AS served_on,
  CASE
    WHEN by_service IS NOT NULL THEN (SELECT day FROM service WHERE service.animal = bulled.animal
      AND service.cycle = bulled.cycle AND heat = by_service)
    WHEN began IS NOT NULL THEN iif(age IS NULL, began, max(began, min(back, coalesce(ended, 1e9))))
    WHEN service_on IS NULL AND age IS NOT NULL
      AND NOT EXISTS (SELECT 1 FROM service WHERE service.animal = bulled.animal AND service.cycle = bulled.cycle
        AND service.day <= bulled.day)
      AND NOT EXISTS (SELECT 1 FROM bull_period WHERE bull_period.animal = bulled.animal AND bull_period.cycle = bulled.cycle
        AND bull_period.began <= bulled.day)
      AND back >= coalesce(opened, -1e9) THEN back
  END AS conceived,
  iif(by_service IS NOT NULL,
    (SELECT sire FROM service WHERE service.animal = bulled.animal AND service.cycle = bulled.cycle AND heat = by_service),
    bull) AS sire
FROM bulled JOIN cycle USING (animal, cycle);
CREATE INDEX told_by_place ON told_conception (animal, cycle, place);

-- One after another: a plain one keeps the conception of the one before, unless she was served between; one with an age
-- that agrees within 15 days keeps that of an earlier day, but where that one was plain, and the age fits a service that
-- was 24 days old by then, or the conception is a bull's. The others tell of it anew.
CREATE TABLE conception AS
WITH RECURSIVE known AS (
  SELECT animal, cycle, place, place AS counts FROM told_conception WHERE place = 1
  UNION ALL
  SELECT known.animal, known.cycle, later.place,
    iif(earlier.conceived IS NOT NULL AND CASE
        WHEN later.plain THEN NOT EXISTS (
          SELECT 1 FROM service WHERE service.animal = later.animal AND service.cycle = later.cycle
            AND service.day > earlier.day AND service.day < later.day)
        WHEN later.service_on IS NULL AND later.day > earlier.day AND abs(later.back - earlier.conceived) <= 15
          THEN NOT earlier.plain
            OR (earlier.served_on IS NOT NULL AND coalesce(earlier.day - later.served_on < 24, 1))
        ELSE 0
      END, counts, later.place)
  FROM known
  JOIN told_conception AS earlier ON earlier.animal = known.animal AND earlier.cycle = known.cycle
    AND earlier.place = counts
  JOIN told_conception AS later ON later.animal = known.animal AND later.cycle = known.cycle
    AND later.place = known.place + 1
)
SELECT animal, cycle, n, conceived, sire
FROM (SELECT animal, cycle, counts AS place, max(known.place) FROM known GROUP BY animal, cycle)
JOIN told_conception USING (animal, cycle, place);
CREATE INDEX conception_by_cycle ON conception (animal, cycle);
