-- The times of made sessions, worked out anew from what review prints as CSV, for DuckDB.
-- Nothing is taken from the program but its output: FOLDER holds NAME.events.csv, NAME.steps.csv
-- (review --csv) and NAME.review.json (review --json). Each decision is set against each step,
-- and what an event said last about the step is what holds until the next decision.

CREATE TABLE told AS
SELECT regexp_extract(filename, '([^/\\]+)\.events\.csv$', 1) AS session,
  row_number() OVER () AS nr, CAST(seq AS BIGINT) AS seq,
  epoch_ms(CAST("at" AS TIMESTAMPTZ)) AS at_ms, CAST(mono_ms AS BIGINT) AS mono,
  coalesce(event_id, '') AS id, fields,
  step || CASE WHEN side IN ('left', 'right') THEN '/' || side ELSE '' END AS step
FROM read_csv('FOLDER/*.events.csv', filename = true, all_varchar = true, header = true,
  delim = ',', quote = '"', escape = '"', strict_mode = true);

CREATE TABLE decision AS
SELECT session, seq, min(at_ms) AS at_ms, min(mono) AS mono,
  bool_or(id = 'EV02') AS resumed, bool_or(id = 'EV03') AS briefed,
  arg_max(id IN ('EV33', 'EV91'), nr) FILTER (id IN ('EV33', 'EV34', 'EV40', 'EV91', 'EV92')) AS hold,
  arg_max(id = 'EV40', nr) FILTER (id IN ('EV02', 'EV40')) AS ended,
  arg_max(step, nr) FILTER (id = 'EV04') AS entered
FROM told GROUP BY session, seq;

CREATE TABLE lapse AS
SELECT session, seq, gap, millis, at_hand, holding,
  gap OR holding OR ended OR NOT briefed AS stopped,
  sum(millis) OVER (PARTITION BY session ORDER BY seq) AS reading
FROM (
  SELECT session, seq, resumed OR mono < coalesce(lag(mono) OVER w, mono) AS gap,
    CASE WHEN resumed OR mono < coalesce(lag(mono) OVER w, mono)
      THEN greatest(0, at_ms - lag(at_ms) OVER w)
      ELSE mono - coalesce(lag(mono) OVER w, mono) END AS millis,
    last_value(entered IGNORE NULLS) OVER past AS at_hand,
    coalesce(last_value(hold IGNORE NULLS) OVER past, false) AS holding,
    coalesce(last_value(ended IGNORE NULLS) OVER past, false) AS ended,
    coalesce(bool_or(briefed) OVER past, false) AS briefed
  FROM decision
  WINDOW w AS (PARTITION BY session ORDER BY seq),
    past AS (PARTITION BY session ORDER BY seq ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING));

CREATE TABLE mark AS
SELECT session, step, seq,
  arg_max(id = 'EV05', nr) FILTER (id IN ('EV05', 'EV25', 'EV26', 'EV27', 'EV28', 'EV65', 'EV66', 'EV73')) AS closes,
  arg_max(id IN ('EV25', 'EV26'), nr) FILTER (id IN ('EV25', 'EV26') OR touch) AS puts_aside,
  arg_max(id = 'EV35', nr) FILTER (id IN ('EV35', 'EV36', 'EV37')) AS times,
  bool_or(touch) AS touched,
  count(*) FILTER (id IN ('EV27', 'EV28', 'EV66', 'EV73') OR (id = 'EV65' AND was)) AS reopened
FROM (SELECT *,
    -- a stage that is taken back opens its step again only if the step was closed
    coalesce(last_value(CASE WHEN id = 'EV05' THEN true
      WHEN id IN ('EV27', 'EV28', 'EV65', 'EV66', 'EV73') THEN false END IGNORE NULLS)
      OVER (PARTITION BY session, step ORDER BY seq, nr
        ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING), false) AS was, id IN ('EV04', 'EV06', 'EV07', 'EV08', 'EV10', 'EV11', 'EV15', 'EV18', 'EV20', 'EV63',
    'EV64', 'EV74', 'EV75', 'EV79', 'EV80',
    'EV35') AS touch FROM told WHERE step IS NOT NULL)
GROUP BY session, step, seq;

CREATE TABLE course AS
SELECT s.session, s.step, l.seq, l.millis, l.reading, m.touched, m.closes, m.reopened,
  l.stopped, coalesce(l.at_hand = s.step, false) AS here,
  coalesce(last_value(m.closes IGNORE NULLS) OVER past, false) AS closed,
  coalesce(last_value(m.puts_aside IGNORE NULLS) OVER past, false) AS aside,
  coalesce(last_value(m.times IGNORE NULLS) OVER past, false) AS timed
FROM (SELECT DISTINCT session, step FROM mark) s
JOIN lapse l ON l.session = s.session
LEFT JOIN mark m ON m.session = s.session AND m.step = s.step AND m.seq = l.seq
WINDOW past AS (PARTITION BY s.session, s.step ORDER BY l.seq
  ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING);

CREATE TABLE worked_out AS
SELECT session, step, coalesce(arg_max(closes, seq) FILTER (closes IS NOT NULL), false) AS closed,
  CAST(sum(millis) FILTER (here AND NOT stopped AND NOT closed AND NOT aside) AS BIGINT) AS working,
  CAST(sum(millis) FILTER (aside AND NOT closed) AS BIGINT) AS aside,
  CAST(sum(millis) FILTER (timed) AS BIGINT) AS timed,
  CAST(CASE WHEN coalesce(arg_max(closes, seq) FILTER (closes IS NOT NULL), false)
    THEN max(reading) FILTER (closes) ELSE max(reading) END
    - min(reading) FILTER (touched) AS BIGINT) AS whole,
  CAST(sum(reopened) AS BIGINT) AS reopened
FROM course GROUP BY session, step;

CREATE TABLE reviewed AS
SELECT regexp_extract(filename, '([^/\\]+)\.review\.json$', 1) AS session, steps, totals
FROM read_json('FOLDER/*.review.json', filename = true, columns = {
  steps: 'STRUCT(step VARCHAR, state VARCHAR, workingMillis BIGINT, asideMillis BIGINT,
    timedMillis BIGINT, wholeMillis BIGINT, reopened VARCHAR[])[]',
  totals: 'STRUCT(elapsedMillis BIGINT, workingMillis BIGINT, heldMillis BIGINT,
    awayMillis BIGINT)'});

CREATE VIEW steps_reviewed AS
SELECT session, s.step AS step, s.state = 'closed' AS closed, s.workingMillis AS working,
  s.asideMillis AS aside, s.timedMillis AS timed, s.wholeMillis AS whole,
  CAST(len(s.reopened) AS BIGINT) AS reopened
FROM (SELECT session, unnest(steps) AS s FROM reviewed);

CREATE VIEW steps_worked_out AS
SELECT r.session, r.step, coalesce(w.closed, false) AS closed, coalesce(w.working, 0) AS working,
  coalesce(w.aside, 0) AS aside, coalesce(w.timed, 0) AS timed, coalesce(w.whole, 0) AS whole,
  coalesce(w.reopened, 0) AS reopened
FROM steps_reviewed r LEFT JOIN worked_out w ON w.session = r.session AND w.step = r.step;

CREATE VIEW totals_reviewed AS
SELECT session, totals.elapsedMillis AS elapsed, totals.workingMillis AS working,
  totals.heldMillis AS held, totals.awayMillis AS away FROM reviewed;

CREATE VIEW totals_worked_out AS
SELECT session, CAST(max(reading) AS BIGINT) AS elapsed, (SELECT CAST(coalesce(sum(working), 0)
    AS BIGINT) FROM worked_out w WHERE w.session = l.session) AS working,
  CAST(coalesce(sum(millis) FILTER (holding AND NOT gap), 0) AS BIGINT) AS held,
  CAST(coalesce(sum(millis) FILTER (gap), 0) AS BIGINT) AS away
FROM lapse l GROUP BY session;

CREATE VIEW fasteners_reviewed AS
SELECT DISTINCT regexp_extract(filename, '([^/\\]+)\.steps\.csv$', 1) AS session,
  step || CASE WHEN side IN ('left', 'right') THEN '/' || side ELSE '' END AS step,
  CAST(coalesce(CAST(duration_s AS DECIMAL(18, 3)), 0) * 1000 AS BIGINT) AS whole,
  CAST(CAST(working_s AS DECIMAL(18, 3)) * 1000 AS BIGINT) AS working,
  CAST(CAST(aside_s AS DECIMAL(18, 3)) * 1000 AS BIGINT) AS aside
FROM read_csv('FOLDER/*.steps.csv', filename = true, all_varchar = true, header = true,
  delim = ',', quote = '"', escape = '"', strict_mode = true);

CREATE VIEW fasteners_worked_out AS
SELECT w.session, w.step, w.whole, w.working, w.aside FROM steps_worked_out w
WHERE (w.session, w.step) IN (SELECT (session, step) FROM fasteners_reviewed);

CREATE VIEW procedure_of AS
SELECT session, fields ->> '$.sha256' AS sha256, at_ms AS began FROM told WHERE id = 'EV01';
