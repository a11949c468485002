-- What the log lines and events of sessions come to. Plain SQL for DuckDB and for Apache Spark.
--
-- Needs: line (session, seq, wall, at_ms, mono, heard), one row for each decision, and
--        event (session, seq, idx, pos, id, step, ...), one row for each event, in order of pos.
-- It counts time as the review does (core/review/ReviewReader and StepTrace); a test holds that.
-- Positions are seq * 1000 + idx, so that what happened later is greater; 0 is never.

CREATE OR REPLACE TEMP VIEW line_flag AS
SELECT session, seq,
  max(CASE WHEN id = 'EV02' THEN pos ELSE 0 END) AS restarted,
  max(CASE WHEN id = 'EV03' THEN pos ELSE 0 END) AS briefed,
  max(CASE WHEN id = 'EV33' THEN pos ELSE 0 END) AS held,
  max(CASE WHEN id IN ('EV34', 'EV40') THEN pos ELSE 0 END) AS let_go,
  max(CASE WHEN id = 'EV40' THEN pos ELSE 0 END) AS ended,
  max(CASE WHEN id = 'EV04' THEN lpad(CAST(pos AS STRING), 15, '0') || step ELSE '' END) AS entered
FROM event
GROUP BY session, seq;

-- The time from the decision before to this one, and how things stood in that time.
CREATE OR REPLACE TEMP VIEW line_state AS
SELECT l.session, l.seq, l.mono, l.at_ms,
  coalesce(f.restarted, 0) AS restarted,
  lag(l.mono) OVER turn AS mono_before,
  lag(l.at_ms) OVER turn AS ms_before,
  coalesce(max(f.restarted) OVER before, 0) AS last_restart,
  coalesce(max(f.briefed) OVER before, 0) AS last_briefed,
  coalesce(max(f.held) OVER before, 0) AS last_held,
  coalesce(max(f.let_go) OVER before, 0) AS last_let_go,
  coalesce(max(f.ended) OVER before, 0) AS last_ended,
  coalesce(max(f.entered) OVER before, '') AS last_entered
FROM line l
LEFT JOIN line_flag f ON f.session = l.session AND f.seq = l.seq
WINDOW turn AS (PARTITION BY l.session ORDER BY l.seq),
  before AS (PARTITION BY l.session ORDER BY l.seq
    ROWS BETWEEN UNBOUNDED PRECEDING AND 1 PRECEDING);

CREATE OR REPLACE TEMP VIEW span AS
SELECT session, seq, gap,
  CASE WHEN mono_before IS NULL THEN 0
    WHEN gap THEN greatest(0, at_ms - ms_before)
    ELSE mono - mono_before END AS millis,
  substr(last_entered, 16) AS at_hand,
  gap OR last_held > last_let_go OR last_briefed = 0 OR last_ended > last_restart AS stopped
FROM (SELECT *, restarted > 0 OR coalesce(mono < mono_before, FALSE) AS gap FROM line_state) s;

CREATE OR REPLACE TEMP VIEW clock AS
SELECT session, seq,
  CAST(sum(millis) OVER (PARTITION BY session ORDER BY seq
    ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW) AS BIGINT) AS millis
FROM span;

-- What moves a step, and a probe at the end of every decision with the time until the next one.
CREATE OR REPLACE TEMP VIEW step_mark AS
SELECT session, step, pos,
  CASE WHEN id = 'EV05' THEN pos ELSE 0 END AS closed,
  CASE WHEN id IN ('EV27', 'EV28') THEN pos ELSE 0 END AS opened,
  CASE WHEN id = 'EV26' THEN pos ELSE 0 END AS snug,
  CASE WHEN id = 'EV25' THEN pos ELSE 0 END AS put_off,
  CASE WHEN id IN ('EV04', 'EV06', 'EV07', 'EV08', 'EV10', 'EV11', 'EV15', 'EV18', 'EV20', 'EV35')
    THEN pos ELSE 0 END AS touched,
  CASE WHEN id = 'EV25' THEN lpad(CAST(pos AS STRING), 15, '0') || reason ELSE '' END AS why,
  CAST(NULL AS BIGINT) AS millis
FROM event
WHERE id IN ('EV04', 'EV05', 'EV06', 'EV07', 'EV08', 'EV10', 'EV11', 'EV15', 'EV18', 'EV20',
    'EV25', 'EV26', 'EV27', 'EV28', 'EV35')
UNION ALL
SELECT session, at_hand, (seq - 1) * 1000 + 999, 0, 0, 0, 0, 0, '', millis
FROM span
WHERE NOT stopped AND at_hand <> '';

CREATE OR REPLACE TEMP VIEW step_course AS
SELECT session, step, millis,
  max(closed) OVER so_far AS closed,
  max(opened) OVER so_far AS opened,
  max(snug) OVER so_far AS snug,
  max(put_off) OVER so_far AS put_off,
  max(touched) OVER so_far AS touched
FROM step_mark
WINDOW so_far AS (PARTITION BY session, step ORDER BY pos
  ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW);

CREATE OR REPLACE TEMP VIEW step_work AS
SELECT session, step,
  CAST(sum(CASE WHEN closed <= greatest(opened, snug, put_off)
      AND greatest(snug, put_off) <= touched THEN millis ELSE 0 END) AS BIGINT) AS working_ms
FROM step_course
WHERE millis IS NOT NULL
GROUP BY session, step;

CREATE OR REPLACE TEMP VIEW step_end AS
SELECT session, step,
  max(closed) AS closed, max(opened) AS opened, max(snug) AS snug, max(put_off) AS put_off,
  min(CASE WHEN touched > 0 THEN touched END) AS first_touch,
  substr(max(why), 16) AS reason,
  CAST(sum(CASE WHEN opened > 0 THEN 1 ELSE 0 END) AS BIGINT) AS reopened
FROM step_mark
GROUP BY session, step;

-- One row for each step that something was done on.
CREATE OR REPLACE TEMP VIEW step_row AS
SELECT e.session, e.step,
  CASE WHEN e.closed > greatest(e.opened, e.snug, e.put_off) THEN 'closed'
    WHEN e.opened > greatest(e.closed, e.snug, e.put_off) THEN 'open'
    WHEN e.snug > greatest(e.closed, e.opened) THEN 'started'
    WHEN e.put_off > 0 THEN 'put off'
    ELSE 'open' END AS state,
  e.reason,
  coalesce(w.working_ms, 0) AS working_ms,
  CASE WHEN e.closed > greatest(e.opened, e.snug, e.put_off)
    THEN b.millis - coalesce(a.millis, b.millis) END AS whole_ms,
  e.reopened,
  e.first_touch AS first_touch
FROM step_end e
LEFT JOIN step_work w ON w.session = e.session AND w.step = e.step
LEFT JOIN clock a ON a.session = e.session AND a.seq = CAST(floor(e.first_touch / 1000) AS BIGINT)
LEFT JOIN clock b ON b.session = e.session AND b.seq = CAST(floor(e.closed / 1000) AS BIGINT);

-- What was refused, at the step it is about or else at the step at hand.
CREATE OR REPLACE TEMP VIEW refusal_row AS
SELECT session, at_step AS step, id, what, count(*) AS n
FROM (
  SELECT session, id,
    CASE WHEN id IN ('EV09', 'EV13', 'EV19') THEN step ELSE at_hand END AS at_step,
    CASE WHEN id = 'EV09' THEN 'value does not match'
      WHEN id = 'EV13' THEN 'closing lacks ' || missing
      WHEN id = 'EV19' THEN 'head marking not in the procedure'
      WHEN id = 'EV23' THEN 'load not accepted, lacks ' || missing
      ELSE 'not possible then: ' || intent END AS what
  FROM (
    SELECT session, id, step, missing, intent,
      substr(max(CASE WHEN id = 'EV04' THEN lpad(CAST(pos AS STRING), 15, '0') || step ELSE '' END)
        OVER (PARTITION BY session ORDER BY pos
          ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW), 16) AS at_hand
    FROM event) h
  WHERE id IN ('EV09', 'EV13', 'EV19', 'EV23', 'EV42')) r
GROUP BY session, at_step, id, what;

-- Phrases that were no phrase, and calls that were taken back or dropped at their read-back.
CREATE OR REPLACE TEMP VIEW misheard_row AS
SELECT session, heard, what, count(*) AS n
FROM (
  SELECT session, id,
    CASE WHEN id = 'EV43' THEN heard ELSE called END AS heard,
    CASE WHEN id = 'EV43' THEN 'not understood: ' || lower(replace(reason, '_', ' '))
      ELSE 'taken back' END AS what
  FROM (
    SELECT e.session, e.id, e.reason, coalesce(l.heard, '') AS heard,
      substr(max(CASE WHEN e.id IN ('EV08', 'EV14', 'EV17', 'EV21')
          THEN lpad(CAST(e.pos AS STRING), 15, '0') || coalesce(l.heard, '') ELSE '' END)
        OVER (PARTITION BY e.session ORDER BY e.pos
          ROWS BETWEEN UNBOUNDED PRECEDING AND CURRENT ROW), 16) AS called
    FROM event e JOIN line l ON l.session = e.session AND l.seq = e.seq) c
  WHERE id IN ('EV10', 'EV29', 'EV43')) m
WHERE heard <> ''
GROUP BY session, heard, what;

-- The last value measured, stage closed and marking read of each step.
CREATE OR REPLACE TEMP VIEW value_row AS
SELECT session, step, what,
  substr(max(lpad(CAST(pos AS STRING), 15, '0') || value), 16) AS value
FROM (
  SELECT session, step, pos, coalesce(value, marking, '') AS value,
    CASE WHEN id = 'EV15' THEN 'measured' WHEN id = 'EV18' THEN 'marking'
      ELSE 'stage ' || CAST(stage AS STRING) END AS what
  FROM event
  WHERE id IN ('EV11', 'EV15', 'EV18')) v
GROUP BY session, step, what;

-- What is still to be done: handed over, put off, started and not tightened.
CREATE OR REPLACE TEMP VIEW due_row AS
SELECT session, step, 'handed over' AS what,
  substr(max(lpad(CAST(pos AS STRING), 15, '0') || coalesce(due, '')), 16) AS detail
FROM event
WHERE id = 'EV38'
GROUP BY session, step
UNION ALL
SELECT session, step, CASE WHEN state = 'started' THEN 'started, not tightened' ELSE state END,
  reason
FROM step_row
WHERE state IN ('put off', 'started');

CREATE OR REPLACE TEMP VIEW session_line AS
SELECT l.session, count(*) AS n_lines,
  min_by(l.wall, l.seq) AS first_at, min_by(l.at_ms, l.seq) AS first_ms,
  max_by(l.wall, l.seq) AS last_at, max_by(l.at_ms, l.seq) AS last_ms, max(c.millis) AS elapsed_ms,
  CAST(sum(CASE WHEN s.gap THEN s.millis ELSE 0 END) AS BIGINT) AS away_ms
FROM line l
JOIN clock c ON c.session = l.session AND c.seq = l.seq
JOIN span s ON s.session = l.session AND s.seq = l.seq
GROUP BY l.session;

CREATE OR REPLACE TEMP VIEW session_event AS
SELECT session, count(*) AS n_events,
  max(CASE WHEN id = 'EV01' THEN title END) AS title,
  max(CASE WHEN id = 'EV01' THEN revision END) AS revision,
  max(CASE WHEN id = 'EV01' THEN sha256 END) AS sha256,
  max(CASE WHEN id = 'EV40' THEN pos ELSE 0 END) AS ended,
  max(CASE WHEN id = 'EV40' AND complete THEN pos ELSE 0 END) AS ended_complete,
  max(CASE WHEN id = 'EV02' THEN pos ELSE 0 END) AS restarted,
  max(CASE WHEN id = 'EV60' THEN pos ELSE 0 END) AS doubted
FROM event
GROUP BY session;

-- One row for each session. It is complete if it ended as complete, was not taken up again and
-- lost no line.
CREATE OR REPLACE TEMP VIEW session_row AS
SELECT l.session, e.title, e.revision, e.sha256,
  l.first_at, l.first_ms, l.last_at, l.last_ms,
  l.n_lines, e.n_events, l.elapsed_ms, l.away_ms,
  coalesce(w.working_ms, 0) AS working_ms,
  CASE WHEN e.ended > e.restarted AND e.ended_complete = e.ended AND e.doubted = 0
    THEN 'complete' ELSE 'open' END AS state
FROM session_line l
JOIN session_event e ON e.session = l.session
LEFT JOIN (SELECT session, CAST(sum(working_ms) AS BIGINT) AS working_ms
  FROM step_work GROUP BY session) w ON w.session = l.session;
