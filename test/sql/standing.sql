-- Where each animal stands on the morning of the list: one row an animal.

CREATE TABLE open_cycle AS
SELECT animal, max(cycle) AS cycle, parity, opened, event FROM cycle GROUP BY animal;

-- Days calved count from the last calving, or from a later loss at 120 days of pregnancy or more; from conception,
-- else from the last service, and with neither it counts.
CREATE TABLE wait AS
WITH lost AS (
    SELECT cycle.animal, cycle.cycle, opened, coalesce(
      (SELECT conceived FROM conception WHERE conception.animal = cycle.animal AND conception.cycle = cycle.cycle - 1),
      (SELECT day FROM service WHERE service.animal = cycle.animal AND service.cycle = cycle.cycle - 1
       ORDER BY heat DESC LIMIT 1)) AS since
    FROM cycle WHERE event = 'loss'
  ),
  counting AS (
    SELECT animal, cycle, opened AS day, 'calving' AS event FROM cycle WHERE event = 'calving'
    UNION ALL SELECT animal, cycle, opened, 'loss' FROM lost JOIN rule
    WHERE since IS NULL OR opened - since >= loss_is_calving
  )
SELECT animal, max(cycle), day, event FROM counting GROUP BY animal;

CREATE TABLE her_season AS
SELECT her_block.animal, her_block.block, season.start, ai_end, bull_end, today - season.start AS s,
  CASE WHEN today < season.start - 35 THEN 'closed' WHEN today < season.start THEN 'before' WHEN today <= ai_end THEN 'ai'
    WHEN today <= bull_end THEN 'bull' WHEN today <= bull_end + 84 THEN 'closing' ELSE 'closed' END AS phase,
  (SELECT min(visit.day) FROM visit WHERE visit.block = season.block AND visit.start = season.start AND visit.day >= today)
    AS visit
FROM her_block JOIN list LEFT JOIN season ON season.block = her_block.block AND season.start = coalesce(
  (SELECT max(start) FROM season WHERE season.block = her_block.block AND start - 35 <= today),
  (SELECT min(start) FROM season WHERE season.block = her_block.block));

-- Facts that go on over calvings and losses; those of the day itself do not count yet.
CREATE TABLE past AS
SELECT seen.*, about AS animal FROM seen JOIN list
WHERE day < today AND kind IN ('bar', 'unbar', 'left', 'to-bull', 'examined', 'hold');
CREATE INDEX past_by_animal ON past (animal, kind, n);

-- Services planned by the vet; a new plan takes the place of those still to come.
CREATE TABLE plan AS
WITH told AS (
  SELECT animal, n, day, CAST(julianday(body ->> '$.serveOn') - 2440587.5 AS INTEGER) AS serve_on,
    coalesce(body ->> '$.session', '-') AS session
  FROM past WHERE kind = 'examined' AND body ->> '$.serveOn' IS NOT NULL
)
SELECT * FROM told WHERE NOT EXISTS (
  SELECT 1 FROM told AS later WHERE later.animal = told.animal AND later.n > told.n AND later.day <= told.serve_on);

CREATE TABLE mark AS
SELECT animal.animal,
  (SELECT kind = 'bar' FROM past WHERE past.animal = animal.animal AND kind IN ('bar', 'unbar') ORDER BY n DESC LIMIT 1)
    IS TRUE AS barred,
  (SELECT min(day) FROM past WHERE past.animal = animal.animal AND kind = 'left') AS left_on,
  (SELECT max(day) FROM past WHERE past.animal = animal.animal AND kind = 'to-bull') AS to_bull,
  (SELECT max(day) FROM past WHERE past.animal = animal.animal AND kind = 'examined') AS examined,
  -- A hold with a last day ends after it; one without lasts until the next hold.
  EXISTS (SELECT 1 FROM past, list WHERE past.animal = animal.animal AND kind = 'hold'
    AND CAST(julianday(body ->> '$.until') - 2440587.5 AS INTEGER) >= today)
    OR (SELECT body ->> '$.until' IS NULL FROM past WHERE past.animal = animal.animal AND kind = 'hold'
      ORDER BY n DESC LIMIT 1) IS TRUE AS on_hold,
  (SELECT session FROM plan, list WHERE plan.animal = animal.animal AND serve_on = today) AS fixed_time,
  (SELECT max(serve_on) FROM plan, list WHERE plan.animal = animal.animal AND serve_on < today) AS planned_before
FROM animal;

CREATE TABLE breeding_fact AS
SELECT about AS animal, day FROM seen WHERE kind IN ('heat', 'service', 'calving', 'loss')
UNION ALL SELECT about, day FROM seen, list WHERE kind = 'check' AND day < today;
CREATE INDEX breeding_fact_by_animal ON breeding_fact (animal, day);

CREATE TABLE standing AS
WITH latest AS (
    SELECT animal, cycle, max(heat) AS heat, day, minute, how, time, sure, last_day, service_day FROM heat GROUP BY animal, cycle
  ),
  latest_sure AS (SELECT animal, cycle, max(heat) AS heat, day, service_day FROM heat WHERE sure GROUP BY animal, cycle),
  last_service AS (SELECT animal, cycle, max(heat) AS heat, day, ai FROM service GROUP BY animal, cycle),
  last_check AS (SELECT animal, cycle, max(n) AS n, day, result FROM "check" GROUP BY animal, cycle),
  counting AS (
    SELECT one.animal, one.cycle, max(one.n), one.day, one.result FROM "check" AS one
    JOIN last_service USING (animal, cycle) WHERE one.day - last_service.day >= counts_from GROUP BY one.animal, one.cycle
  ),
  chance AS (
    SELECT service.animal, count(*) AS used FROM service JOIN her_season USING (animal)
    WHERE ai AND day >= start - 35 GROUP BY service.animal
  )
SELECT animal.animal, number, sex = 'F' AS female, her_season.block, start, ai_end, bull_end, s, phase, visit, today,
  (born IS NULL OR born <= today) AND left_on IS NULL AS in_herd, born, left_on, barred, on_hold, examined, fixed_time, planned_before,
  open_cycle.cycle, open_cycle.opened, open_cycle.parity, open_cycle.parity = 0 AS maiden,
  open_cycle.parity > 0 OR (ready AND (born IS NULL OR today - born >= 330))
    OR EXISTS (SELECT 1 FROM service WHERE service.animal = animal.animal)
    OR EXISTS (SELECT 1 FROM "check" AS one WHERE one.animal = animal.animal AND result = 'pregnant') AS ready,
  wait.day AS wait_from, wait.event AS wait_event, today - wait.day AS calved,
  (SELECT max(opened) FROM cycle WHERE cycle.animal = animal.animal AND event = 'loss') AS lost,
  (SELECT max(day) FROM calving WHERE calving.animal = animal.animal) AS last_calving,
  latest.day AS heat_day, latest.minute AS heat_minute, latest.how AS heat_how, latest.time AS heat_time,
  latest.sure AS heat_sure,
  latest.service_day AS heat_service,
  latest_sure.day AS sure_day, latest_sure.service_day AS sure_service,
  last_service.day AS service_day, last_service.ai AS service_ai, today - last_service.day AS k,
  last_check.day AS check_day, last_check.result AS check_result,
  counting.day AS counting_day, counting.result AS counting_result,
  conception.animal IS NOT NULL AS in_calf, conceived,
  (SELECT found.day FROM "check" AS found WHERE found.animal = conception.animal AND found.cycle = conception.cycle
     AND found.n = conception.n) AS found_day,
  conceived + coalesce(sire.gestation,
    (SELECT iif(open_cycle.parity = 0, gestation.maiden, days) FROM spelled JOIN gestation USING (breed)
     WHERE spelled.name = lower(trim(sire.breed))),
    rule.gestation) AS due,
  coalesce(used, 0) AS used, coalesce(to_bull >= start - 35, 0) AS left_to_bull
FROM animal JOIN list JOIN rule
JOIN open_cycle USING (animal) JOIN her_season USING (animal) JOIN mark USING (animal)
LEFT JOIN wait USING (animal)
LEFT JOIN latest USING (animal, cycle) LEFT JOIN latest_sure USING (animal, cycle)
LEFT JOIN last_service USING (animal, cycle) LEFT JOIN last_check USING (animal, cycle)
LEFT JOIN counting USING (animal, cycle)
LEFT JOIN conception USING (animal, cycle)
LEFT JOIN sire ON sire.code = conception.sire
LEFT JOIN chance USING (animal);

-- The last time with a bull, by her own facts, that she may be in calf from: since her cycle began, no longer ago than a
-- pregnancy, no sure heat after it but the one she is on, and no check that found her empty long enough after it.
CREATE TABLE maybe_bull AS
SELECT his.animal, max(his.n) AS n, began, ended FROM own_bull AS his JOIN standing USING (animal) JOIN rule
WHERE NOT in_calf AND (opened IS NULL OR began >= opened OR ended >= opened) AND today - coalesce(ended, today) <= 300
  AND NOT EXISTS (SELECT 1 FROM heat WHERE heat.animal = his.animal AND heat.cycle = standing.cycle AND heat.sure
    AND heat.day > coalesce(ended, today) AND NOT (heat.service_day IS NULL AND today - heat.day <= 1))
  AND NOT EXISTS (SELECT 1 FROM "check" AS one WHERE one.animal = his.animal AND one.cycle = standing.cycle
    AND one.result = 'empty' AND one.day - coalesce(ended, today) >= final)
GROUP BY his.animal;

-- What the sections ask, in the words of the rules.
CREATE TABLE asked AS
SELECT standing.*, rule.*,
  in_herd AND female AND NOT barred AND ready AND start IS NOT NULL AS breeds,
  heat_day IS NOT NULL AND heat_service IS NULL AND today - heat_day <= 1 AS on_heat,
  -- Known by nothing but a service of the day: a tick, which does not move a planned service.
  heat_day = today AND heat_how IS NULL AS seen_by_service,
  NOT in_calf AND used < chances AND NOT left_to_bull AND (maiden AND today - born < 330) IS NOT TRUE AS may_be_served,
  service_day IS NOT NULL AND counting_day IS NULL AS unchecked,
  counting_result IS 'empty' AS checked_empty,
  EXISTS (SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle AND sure
    AND heat.service_day IS NULL AND heat.day - standing.service_day >= watch_from) AS returned,
  -- In no heat seen and heat record a heat of the day ticks and does not move.
  EXISTS (SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle AND sure_on < today
    AND day >= iif(maiden OR calved IS NULL OR calved > 150, start - 42, -1e9)) AS cycling_seen,
  EXISTS (SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle AND sure_on < today
    AND day >= today - 24) AS heat_in_24_days,
  EXISTS (SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle AND sure_on < today
    AND day > counting_day) AS heat_since_check,
  -- Served and neither back nor checked empty, or checked unsure and not seen since: treatment would end a pregnancy.
  (check_result IS 'unsure' AND NOT EXISTS (SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle
      AND sure_on < today AND day > check_day))
    OR (service_day IS NOT NULL AND counting_result IS NOT 'empty' AND NOT EXISTS (
      SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle AND sure
        AND heat.service_day IS NULL AND heat.day - standing.service_day >= watch_from))
    OR maybe_bull.animal IS NOT NULL AS maybe_in_calf,
  maybe_bull.began AS bull_began, maybe_bull.ended AS bull_ended,
  EXISTS (SELECT 1 FROM heat WHERE heat.animal = standing.animal AND heat.cycle = standing.cycle AND sure
    AND heat.service_day IS NULL AND day > check_day) AS heat_since_last_check,
  wait_from + to_serve AS ready_on,
  in_calf AND service_day - conceived >= 2 AND counting_day IS NULL AS served_in_calf,
  CASE method WHEN 'ultrasound' THEN iif(maiden, ultrasound_maiden, ultrasound) WHEN 'hand' THEN hand ELSE milk_or_blood END
    AS check_from,
  -- Milk only of cows in milk; milk and blood so many days after calving and any loss.
  (method <> 'milk' OR (NOT maiden AND NOT EXISTS (SELECT 1 FROM seen WHERE about = standing.animal AND kind = 'dry'
      AND day >= coalesce(last_calving, -1e9))))
    AND (method NOT IN ('milk', 'blood') OR ((calved >= milk_or_blood_calved OR (maiden AND calved IS NULL))
      AND (lost IS NULL OR today - lost >= milk_or_blood_calved))) IS TRUE AS method_fits
FROM standing JOIN rule LEFT JOIN maybe_bull USING (animal);
