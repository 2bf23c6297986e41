-- The sections: every reason that holds, then the first section that fits, then its row.

CREATE TABLE reason AS
WITH now AS (SELECT *, on_heat OR fixed_time IS NOT NULL AS to_serve_now,
    on_heat AND NOT (fixed_time IS NOT NULL AND seen_by_service) AS heat_now,
    -- The day that is served: her heat's, or that of the fixed-time service.
    iif(on_heat, heat_day, today) - service_day AS since_service FROM asked),
serves AS (
  SELECT animal FROM now WHERE breeds AND phase = 'ai' AND to_serve_now AND may_be_served AND used = 0
    AND (calved >= to_serve OR (maiden AND calved IS NULL))
),
-- Whom somebody may mean to serve; barred animals and maidens that are not ready are left out.
meant AS (SELECT * FROM now WHERE in_herd AND female AND NOT barred AND ready AND phase = 'ai' AND may_be_served),
-- A heat of two or three days ago, or a service planned for the last three days, that was not served.
could AS (
  SELECT animal, cycle, heat_day AS day FROM meant
  WHERE NOT on_hold AND heat_sure AND heat_service IS NULL AND today - heat_day IN (2, 3)
  UNION ALL
  SELECT animal, cycle, planned_before FROM meant
  WHERE NOT on_hold AND NOT on_heat AND today - planned_before IN (1, 2, 3)
    AND NOT EXISTS (SELECT 1 FROM service WHERE service.animal = meant.animal AND service.cycle = meant.cycle
                      AND service.day >= planned_before - 1)
),
missed AS (
  SELECT DISTINCT animal FROM could JOIN asked USING (animal)
  WHERE could.day >= start - 1 AND (could.day - wait_from >= to_serve OR (maiden AND wait_from IS NULL))
    AND NOT EXISTS (SELECT 1 FROM (SELECT max(service.day) AS day FROM service WHERE service.animal = could.animal
        AND service.cycle = could.cycle AND service.day < could.day) AS before
      WHERE could.day - before.day >= short_from AND could.day - before.day < watch_from)
),
herd AS (SELECT * FROM now WHERE in_herd),
breeding AS (SELECT * FROM now WHERE breeds)

SELECT animal, 1 AS section, 1 AS place, 'in-calf-heat' AS reason FROM herd WHERE in_calf AND on_heat
UNION ALL SELECT animal, 1, 2, 'served-in-calf' FROM herd WHERE served_in_calf AND today - max(service_day, coalesce(found_day, 0)) <= 7
UNION ALL SELECT animal, 1, 3, 'overdue' FROM herd WHERE in_calf AND today - due > overdue
UNION ALL SELECT animal, 1, 4, 'calving-unknown' FROM meant WHERE to_serve_now AND NOT maiden AND calved IS NULL
UNION ALL SELECT animal, 1, 5, 'calved-under-30' FROM meant WHERE to_serve_now AND calved < never
UNION ALL SELECT animal, 1, 6, 'calved-30-41' FROM meant WHERE to_serve_now AND calved >= never AND calved < to_serve
UNION ALL SELECT animal, 1, 7, 'short-interval' FROM meant WHERE to_serve_now AND since_service >= short_from AND since_service < watch_from
UNION ALL SELECT animal, 1, 8, 'hold' FROM meant WHERE to_serve_now AND on_hold
UNION ALL SELECT animal, 1, 9, 'unserved-heat' FROM missed
UNION ALL SELECT animal, 1, 10, 'no-service-fits' FROM herd WHERE in_calf AND conceived IS NULL
UNION ALL SELECT animal, 1, 11, 'loss' FROM herd WHERE today - lost <= 7
UNION ALL SELECT animal, 1, 12, 'contradiction' FROM now
  WHERE EXISTS (SELECT 1 FROM (SELECT day - lag(last_day) OVER (ORDER BY calving) AS apart FROM calving
                               WHERE calving.animal = now.animal) WHERE apart < 200)
    OR EXISTS (SELECT 1 FROM breeding_fact AS fact WHERE fact.animal = now.animal
                 AND (fact.day > left_on OR fact.day < born OR NOT female))
    OR (SELECT min(day) FROM calving WHERE calving.animal = now.animal) - born < 540
    OR EXISTS (SELECT 1 FROM animal AS one JOIN animal AS parent
                 ON (parent.number = one.sire OR parent.international = one.sire) AND parent.sex = 'F'
               WHERE one.animal = now.animal)
    OR EXISTS (SELECT 1 FROM animal AS one JOIN animal AS parent
                 ON (parent.number = one.dam OR parent.international = one.dam) AND parent.sex = 'M'
               WHERE one.animal = now.animal)

UNION ALL SELECT animal, 2, 1, 'on-heat' FROM now JOIN serves USING (animal) WHERE heat_now
UNION ALL SELECT animal, 2, 2, 'fixed-time' FROM now JOIN serves USING (animal) WHERE fixed_time IS NOT NULL

UNION ALL SELECT animal, 3, 1, 'on-heat' FROM breeding
  WHERE phase = 'ai' AND heat_now AND may_be_served AND used > 0 AND (service_day IS NULL OR since_service >= watch_from)
UNION ALL SELECT animal, 3, 2, 'fixed-time' FROM breeding
  WHERE phase = 'ai' AND fixed_time IS NOT NULL AND may_be_served AND used > 0
    AND (service_day IS NULL OR since_service >= watch_from)

UNION ALL SELECT animal, 4, 1, 'since-service' FROM breeding
  WHERE phase <> 'closed' AND NOT in_calf AND unchecked AND NOT returned AND k BETWEEN watch_from AND watch_to
-- One of the two: what the row counts its days and its chance from.
UNION ALL SELECT animal, 4, 2, 'since-heat' FROM breeding
  WHERE NOT (NOT in_calf AND unchecked AND NOT returned AND k BETWEEN watch_from AND watch_to) IS TRUE AND phase IN ('before', 'ai') AND may_be_served AND sure_service IS NULL
    AND today - sure_day BETWEEN watch_from AND watch_to

UNION ALL SELECT animal, 5, 1, 'due' FROM breeding
  WHERE (NOT in_calf AND unchecked AND (NOT returned OR today > bull_end) AND k >= check_from AND method_fits)
    -- With a bull, and nothing heard of her since; in his weeks and after them the final check finds her.
    OR (phase NOT IN ('bull', 'closing') AND today - bull_ended >= final)
UNION ALL SELECT animal, 5, 2, 'unsure' FROM breeding
  WHERE check_result = 'unsure' AND today - check_day >= recheck AND (service_day IS NULL OR service_day <= check_day)
UNION ALL SELECT animal, 5, 3, 'heat-in-calf' FROM breeding WHERE in_calf AND heat_since_last_check
UNION ALL SELECT animal, 5, 4, 'served-in-calf' FROM breeding WHERE served_in_calf AND k >= check_from AND method_fits
UNION ALL SELECT animal, 5, 5, 'confirm' FROM breeding
  WHERE in_calf AND today - conceived >= confirm AND due - today > dry_off
    AND NOT EXISTS (SELECT 1 FROM "check" AS one WHERE one.animal = breeding.animal AND one.cycle = breeding.cycle
                      AND one.day >= conceived + confirm)
UNION ALL SELECT animal, 5, 6, 'final' FROM breeding
  WHERE today >= bull_end + final AND NOT in_calf AND lost > bull_end IS NOT TRUE
    -- A maiden too young for the bull was never meant for him.
    AND (NOT maiden OR service_day IS NOT NULL OR born IS NULL OR bull_end - born >= 330)
    AND NOT EXISTS (SELECT 1 FROM calving WHERE calving.animal = breeding.animal AND calving.day > bull_end)
    AND NOT EXISTS (SELECT 1 FROM "check" AS one WHERE one.animal = breeding.animal AND one.day >= bull_end + final)

UNION ALL SELECT animal, 6, 1, 'chances' FROM breeding
  WHERE phase = 'ai' AND NOT in_calf AND used >= chances AND (service_day IS NULL OR returned OR checked_empty)
UNION ALL SELECT animal, 6, 2, 'by-hand' FROM breeding WHERE phase = 'ai' AND NOT in_calf AND left_to_bull
UNION ALL SELECT animal, 6, 3, 'late' FROM breeding
  WHERE phase = 'ai' AND NOT in_calf AND ready_on > ai_end AND ready_on <= bull_end
UNION ALL SELECT animal, 6, 4, 'window' FROM breeding
  WHERE phase = 'bull' AND NOT in_calf AND NOT on_hold AND (ready_on > bull_end) IS NOT TRUE AND (maiden AND today - born < 330) IS NOT TRUE
UNION ALL SELECT animal, 6, 5, 'keep-from-bull' FROM breeding
  WHERE phase = 'bull' AND NOT in_calf AND (on_hold OR ready_on > bull_end OR (maiden AND today - born < 330) IS TRUE)

UNION ALL SELECT animal, 7, 1, 'cycling-not-seen' FROM breeding
  WHERE NOT in_calf AND today - examined <= 21 IS NOT TRUE AND used = 0 AND NOT maybe_in_calf AND NOT cycling_seen
    AND ((phase = 'before' AND s >= -14 AND (calved >= 30 OR (maiden AND calved IS NULL))) OR (phase = 'ai' AND (calved >= 60 OR (maiden AND calved IS NULL))))
UNION ALL SELECT animal, 7, 2, 'no-heat-24-days' FROM breeding
  WHERE NOT in_calf AND today - examined <= 21 IS NOT TRUE AND NOT maybe_in_calf AND phase = 'ai' AND s >= 21
    -- A second heat is awaited of a cow that came back, or that lost her calf more than 24 days ago.
    AND (used = 0 OR (may_be_served AND iif(service_day IS NOT NULL, returned, opened IS NULL OR today - opened > 24)))
    AND (calved >= to_serve OR (maiden AND calved IS NULL)) AND NOT heat_in_24_days
UNION ALL SELECT animal, 7, 3, 'empty' FROM breeding
  WHERE today - examined <= 21 IS NOT TRUE AND phase = 'ai' AND may_be_served AND NOT maybe_in_calf AND checked_empty AND NOT heat_since_check
UNION ALL SELECT animal, 7, 4, 'at-risk' FROM breeding
  WHERE NOT in_calf AND NOT maybe_in_calf AND today - examined <= 21 IS NOT TRUE AND phase = 'before' AND s >= -28 AND (calved >= 21 OR (maiden AND calved IS NULL))
    AND (SELECT max(day) FROM (
           SELECT day FROM (SELECT max(calving), day, hard FROM calving WHERE calving.animal = breeding.animal) WHERE hard
           UNION ALL SELECT opened FROM (SELECT max(opened) AS opened FROM cycle WHERE cycle.animal = breeding.animal AND event = 'loss')
             WHERE opened > coalesce((SELECT max(day) FROM calving WHERE calving.animal = breeding.animal), -1e9)))
      > coalesce(examined, -1e9)

UNION ALL SELECT animal, 8, 1, 'none-seen' FROM breeding WHERE phase = 'before' AND NOT in_calf AND NOT cycling_seen;

CREATE TABLE place AS
WITH fits AS (
  SELECT reason.animal, section, group_concat(reason, ' ' ORDER BY place) AS reasons, min(place) AS first,
    -- While a scanning visit is planned on a later day, checks stand on no list before it.
    section = 5 AND visit > today AS waits
  FROM reason JOIN standing USING (animal) GROUP BY reason.animal, section
)
SELECT animal, section, reasons, first, waits IS TRUE AS waits,
  row_number() OVER (PARTITION BY animal ORDER BY section) AS choice,
  iif(section = 1, lead(section) OVER (PARTITION BY animal ORDER BY section), NULL) AS also
FROM fits WHERE waits IS NOT TRUE;

-- The milking at which she is served. One that has gone by gives way to the next; on the last day of AI it is that evening.
CREATE TABLE serving AS
WITH hour AS (
    SELECT milkings, CAST(substr(morning, 1, 2) AS INTEGER) * 60 + CAST(substr(morning, 4, 2) AS INTEGER) AS am,
      CAST(substr(evening, 1, 2) AS INTEGER) * 60 + CAST(substr(evening, 4, 2) AS INTEGER) AS pm FROM farm
  ),
  milking AS (
    SELECT later.value AS later, 'morning' AS part, am AS minute, am, pm, milkings FROM hour, json_each('[0,1,2]') AS later
    UNION ALL SELECT later.value, 'evening', pm, am, pm, milkings FROM hour, json_each('[0,1,2]') AS later WHERE milkings = 2
  ),
  served AS (
    SELECT asked.*, on_heat AND NOT (fixed_time IS NOT NULL AND seen_by_service) AS heat_now
    FROM asked JOIN place USING (animal) WHERE choice = 1 AND section IN (2, 3)
  ),
  found AS (
    SELECT animal, heat_day + later AS day, part,
      row_number() OVER (PARTITION BY animal ORDER BY
        iif(serving_time = 'by-the-hour' AND heat_how = 'activity', abs(later * 1440 + minute - heat_minute - 930), 0),
        later, minute) AS best
    FROM served JOIN milking
      ON heat_now AND CASE
        -- Once a day last evening's heats go with this morning's.
        WHEN serving_time = 'at-next-milking' THEN
          iif(milkings = 1 AND heat_time = 'evening', later > 0, later * 1440 + minute >= heat_minute)
        WHEN heat_how = 'activity' THEN later * 1440 + minute > heat_minute
        -- Seen before noon that evening, later the next morning.
        ELSE later * 1440 + minute > heat_minute
          AND later * 1440 + minute >= CASE WHEN heat_minute >= 720 THEN 1440 + am WHEN milkings = 2 THEN pm ELSE 0 END END
    UNION ALL
    SELECT animal, today, iif(fixed_time = '-', 'morning', fixed_time), 1 FROM served WHERE NOT heat_now
  ),
  moved AS (
    SELECT animal, CASE WHEN day < today THEN today WHEN day > ai_end THEN ai_end ELSE day END AS day,
      CASE WHEN day < today THEN 'morning' WHEN day > ai_end THEN 'evening' ELSE part END AS part
    FROM found JOIN asked USING (animal) WHERE best = 1
  ),
  -- Served already, without being on the list before: at the milking that was named.
  named AS (
    SELECT animal, body ->> '$.session' AS session, min(n) FROM served JOIN event USING (animal)
    WHERE heat_now AND seen_by_service AND kind = 'service' AND event.day = today GROUP BY animal
  )
SELECT animal, coalesce(session, iif(moved.day > today, 'next-', '') || part) AS session,
  iif(heat_now AND session IS NULL, (moved.day - heat_day) * 1440 + iif(part = 'morning', am, pm) - heat_minute, NULL) AS after
FROM moved JOIN served USING (animal) JOIN hour LEFT JOIN named USING (animal);

-- The facts of the day that tick a row of each section.
CREATE TABLE tick AS
SELECT about AS animal, kind FROM live JOIN list ON day = today;
CREATE INDEX tick_by_animal ON tick (animal);

CREATE TABLE row AS
WITH placed AS (
  SELECT asked.*, on_heat AND NOT (fixed_time IS NOT NULL AND seen_by_service) AS heat_now, place.section, reasons, also, substr(reasons || ' ', 1, instr(reasons || ' ', ' ') - 1) AS reason,
    CASE
      WHEN place.section IN (2, 3) THEN iif(on_heat AND NOT (fixed_time IS NOT NULL AND seen_by_service), 'heat', NULL)
      WHEN place.section = 4 THEN iif(reasons LIKE 'since-heat%', 'heat since', 'service')
      WHEN place.section = 5 THEN iif(service_day IS NULL, 'wait', 'service')
      WHEN place.section = 6 THEN iif(service_day >= start - 35, 'service', 'wait')
      WHEN place.section IN (7, 8) THEN 'wait'
      WHEN reasons LIKE 'in-calf-heat%' OR reasons LIKE 'calving-unknown%' OR reasons LIKE 'hold%' THEN 'heat'
      WHEN reasons LIKE 'unserved%' THEN iif(today - heat_day <= 3, 'heat', NULL)
      WHEN reasons LIKE 'served-in-calf%' OR reasons LIKE 'short%' OR reasons LIKE 'overdue%' THEN 'service'
      WHEN reasons LIKE 'calved%' THEN 'wait'
      WHEN reasons LIKE 'loss%' THEN 'loss'
    END AS counts
  FROM asked JOIN place USING (animal) WHERE choice = 1
)
SELECT animal, number, block, section, reasons, also, session, section IN (2, 3) AND heat_now AS by_heat,
  CASE counts WHEN 'heat' THEN iif(heat_day IS NULL, NULL, 'heat') WHEN 'heat since' THEN 'heat'
    WHEN 'service' THEN iif(service_day IS NULL, NULL, 'service') WHEN 'wait' THEN wait_event WHEN 'loss' THEN 'loss' END AS since,
  today - CASE counts WHEN 'heat' THEN heat_day WHEN 'heat since' THEN sure_day WHEN 'service' THEN service_day
    WHEN 'wait' THEN wait_from WHEN 'loss' THEN lost END AS days,
  concat_ws(' ',
    iif(((section = 1 AND in_herd AND on_heat AND reason <> 'overdue') OR (section IN (2, 3) AND heat_now)) AND NOT heat_sure, 'suspect', NULL),
    iif(section = 5 AND reasons LIKE 'due%' AND k BETWEEN 36 AND 48 AND NOT in_calf AND unchecked
      AND (NOT returned OR today > bull_end) AND k >= check_from AND method_fits, 'second-round', NULL),
    iif(section IN (2, 3) AND ((unchecked AND iif(on_heat, heat_day, today) - service_day >= iif(on_heat, 25, 1))
      OR iif(on_heat, heat_day, today) - bull_began >= iif(on_heat, 25, 1)), 'late-return', NULL),
    iif(section IN (2, 3) AND check_result = 'unsure', 'unsure', NULL),
    iif(section = 6 AND phase = 'bull' AND EXISTS (SELECT 1 FROM heat JOIN service USING (animal, cycle)
      WHERE heat.animal = placed.animal AND heat.cycle = placed.cycle AND sure AND NOT service.ai
        AND heat.day - service.day BETWEEN watch_from AND watch_to), 'bull-return', NULL),
    iif(section IN (2, 3) AND (after > 1440 OR (serving_time = 'by-the-hour' AND heat_how = 'activity' AND after < 420)),
      'outside-hours', NULL)) AS warnings,
  EXISTS (SELECT 1 FROM tick WHERE tick.animal = placed.animal AND CASE
    WHEN kind IN ('left', 'bar') THEN 1
    WHEN section = 1 THEN kind NOT IN ('heat', 'calving', 'loss')
    WHEN section IN (2, 3) THEN kind IN ('service', 'to-bull', 'hold')
    WHEN section = 4 THEN kind IN ('looked', 'check', 'service')
    WHEN section = 5 THEN kind = 'check'
    WHEN section = 6 AND reason = 'keep-from-bull' THEN kind IN ('from-bull', 'hold')
    WHEN section = 6 THEN kind IN ('with-bull', 'service')
    ELSE kind IN ('heat', 'service', 'examined', 'hold', 'check') END)
    OR (section = 6 AND reason <> 'keep-from-bull'
      AND EXISTS (SELECT 1 FROM own_bull WHERE own_bull.animal = placed.animal AND ended IS NULL)) AS done,
  -- What orders the rows of a section after their block.
  CASE WHEN section IN (1, 6) THEN (SELECT first FROM place WHERE place.animal = placed.animal AND choice = 1)
    WHEN section IN (2, 3) THEN CASE session WHEN 'morning' THEN 0 WHEN 'evening' THEN 1 WHEN 'next-morning' THEN 2 ELSE 3 END
  END AS first,
  CASE WHEN section IN (2, 3) THEN iif(heat_now, (heat_day - today) * 1440 + heat_minute, 0)
    WHEN section IN (5, 7) THEN -coalesce(today - CASE counts WHEN 'service' THEN service_day ELSE wait_from END, -1e9)
  END AS second
FROM placed LEFT JOIN serving USING (animal);

-- Blocks on the day, by the mating start of the season shown: the live one, else the next, else the last.
CREATE TABLE shown AS
WITH current AS (
    SELECT block, coalesce(max(iif(start - 35 <= today, start, NULL)), min(start)) AS start FROM season JOIN list GROUP BY block
  )
SELECT block, row_number() OVER (ORDER BY coalesce(
    iif(today < start - 35 OR today > bull_end + 84,
      (SELECT min(start) FROM season AS next WHERE next.block = current.block AND next.start > today), NULL), start), block) AS place
FROM current JOIN season USING (block, start) JOIN list;
