-- Questions to many sessions. Plain SQL for DuckDB and for Apache Spark.
--
-- Needs the relations of facts.sql, and
--        base (session): the sessions that are the measure.
-- percentile is exact and linear between neighbours (type 7 of Hyndman and Fan, 1996).

CREATE OR REPLACE TEMP VIEW step_spread AS
SELECT s.step,
  count(*) AS sessions,
  min(s.working_ms) AS least_ms,
  percentile(s.working_ms, 0.25) AS q1_ms,
  percentile(s.working_ms, 0.5) AS median_ms,
  percentile(s.working_ms, 0.75) AS q3_ms,
  max(s.working_ms) AS most_ms,
  CAST(sum(s.working_ms) AS BIGINT) AS sum_ms,
  CAST(sum(s.reopened) AS BIGINT) AS reopened,
  percentile(s.begun, 0.5) AS place
FROM step_fact s
JOIN base b ON b.session = s.session
WHERE s.state = 'closed'
GROUP BY s.step;

-- Tukey's fence: above the third quartile by more than one and a half times the spread.
CREATE OR REPLACE TEMP VIEW step_slow AS
SELECT p.step, count(*) AS slow
FROM step_fact s
JOIN base b ON b.session = s.session
JOIN step_spread p ON p.step = s.step
WHERE s.state = 'closed' AND s.working_ms > p.q3_ms + 1.5 * (p.q3_ms - p.q1_ms)
GROUP BY p.step;

CREATE OR REPLACE TEMP VIEW compared_steps AS
SELECT p.step, p.sessions, p.least_ms, p.q1_ms, p.median_ms, p.q3_ms, p.most_ms, p.sum_ms,
  p.reopened, coalesce(w.slow, 0) AS slow, p.place
FROM step_spread p
LEFT JOIN step_slow w ON w.step = p.step;

CREATE OR REPLACE TEMP VIEW compared_refusals AS
SELECT r.step, r.id, r.what, CAST(sum(r.n) AS BIGINT) AS times,
  count(DISTINCT r.session) AS sessions
FROM refusal_fact r
JOIN base b ON b.session = r.session
GROUP BY r.step, r.id, r.what;

CREATE OR REPLACE TEMP VIEW compared_phrases AS
SELECT m.heard, m.what, CAST(sum(m.n) AS BIGINT) AS times, count(DISTINCT m.session) AS sessions
FROM misheard_fact m
JOIN base b ON b.session = m.session
GROUP BY m.heard, m.what;

-- Left against right: the same step of the procedure on both sides.
CREATE OR REPLACE TEMP VIEW compared_sides AS
SELECT l.session, split_part(l.step, '/', 1) AS step,
  l.state AS left_state, r.state AS right_state,
  l.working_ms AS left_ms, r.working_ms AS right_ms
FROM step_fact l
JOIN base b ON b.session = l.session
JOIN step_fact r ON r.session = l.session
  AND r.step = split_part(l.step, '/', 1) || '/right'
WHERE l.step = split_part(l.step, '/', 1) || '/left';

CREATE OR REPLACE TEMP VIEW compared_side_spread AS
SELECT step, count(*) AS sessions,
  percentile(left_ms, 0.5) AS left_median_ms,
  percentile(right_ms, 0.5) AS right_median_ms,
  percentile(right_ms - left_ms, 0.5) AS difference_ms,
  CAST(sum(CASE WHEN right_ms > left_ms THEN 1 ELSE 0 END) AS BIGINT) AS right_longer
FROM compared_sides
WHERE left_state = 'closed' AND right_state = 'closed'
GROUP BY step;
