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

-- Pregnant results with no empty one after them. A plain one keeps the conception of the one before, unless she was
-- served between; the others tell of it anew.
CREATE TABLE pregnant AS
WITH told AS (
  SELECT *, lag(day) OVER (PARTITION BY animal, cycle ORDER BY n) AS before
  FROM "check" AS one
  WHERE result = 'pregnant' AND NOT EXISTS (
    SELECT 1 FROM "check" AS later WHERE later.animal = one.animal AND later.cycle = one.cycle
      AND later.n > one.n AND later.result = 'empty')
)
SELECT *, max(iif(
    service_on IS NOT NULL OR age IS NOT NULL OR before IS NULL
      OR EXISTS (SELECT 1 FROM service WHERE service.animal = told.animal AND service.cycle = told.cycle
                   AND service.day > before AND service.day < told.day), n, NULL))
  OVER (PARTITION BY animal, cycle) AS anew
FROM told;

-- What each of them tells.
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
SELECT animal, cycle, bulled.n, anew,
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
-- The first from there on that fits something.
CREATE TABLE conception AS
SELECT animal, cycle, conceived, sire, min(iif(conceived IS NULL, 1e9, n)) AS n FROM told_conception WHERE n >= anew
GROUP BY animal, cycle;
CREATE INDEX conception_by_cycle ON conception (animal, cycle);
