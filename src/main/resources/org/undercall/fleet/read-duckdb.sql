-- The lines of the logs in the table batch (path, session, size), as line and event, for DuckDB.
-- PATHS stands for the list of files. A line that is no JSON gives a row without it.

CREATE OR REPLACE TEMP TABLE raw AS
SELECT b.session, CAST(r.json AS VARCHAR) AS text,
  json_transform(r.json, '{"seq": "BIGINT", "at": "VARCHAR", "mono": "BIGINT", "prev": "VARCHAR",
    "sum": "VARCHAR", "heard": {"text": "VARCHAR"}, "events": [{"id": "VARCHAR", "step": "VARCHAR",
    "title": "VARCHAR", "revision": "VARCHAR", "sha256": "VARCHAR", "missing": "VARCHAR",
    "intent": "VARCHAR", "reason": "VARCHAR", "due": "VARCHAR", "value": "VARCHAR",
    "marking": "VARCHAR", "stage": "BIGINT", "complete": "BOOLEAN"}]}') AS j
FROM read_ndjson_objects(PATHS, filename = true, ignore_errors = true,
  maximum_object_size = 33554432) r
JOIN batch b ON b.path = r.filename;

CREATE OR REPLACE TEMP TABLE line AS
SELECT session, j.seq AS seq, j."at" AS wall,
  epoch_ms(TRY_CAST(j."at" AS TIMESTAMPTZ)) AS at_ms,
  j.mono AS mono, j.heard.text AS heard, j.prev AS prev, j."sum" AS own_sum,
  coalesce(right(text, 74) = ',"sum":"' || sha256(left(text, length(text) - 74)) || '"}', false)
    AS whole,
  strlen(text) + 1 AS bytes
FROM raw;

CREATE OR REPLACE TEMP TABLE event AS
SELECT session, seq, idx, seq * 1000 + idx AS pos, e.id AS id, e.step AS step, e.title AS title,
  e.revision AS revision, e.sha256 AS sha256, e.missing AS missing, e.intent AS intent,
  e.reason AS reason, e.due AS due, e.value AS value, e.marking AS marking, e.stage AS stage,
  e.complete AS complete
FROM (
  SELECT session, j.seq AS seq, unnest(j.events) AS e,
    unnest(range(1, len(j.events) + 1)) AS idx
  FROM raw
  WHERE j.seq BETWEEN 1 AND 1000000000);

-- Sessions that may not be as they were written, and are to be looked at line by line.
CREATE OR REPLACE TEMP TABLE suspect AS
SELECT b.session
FROM batch b
LEFT JOIN (
  SELECT session, count(*) AS n, min(seq) AS low, max(seq) AS high, count(DISTINCT seq) AS single,
    bool_and(whole AND at_ms IS NOT NULL AND mono BETWEEN -1000000000000000 AND 1000000000000000)
      AS sound,
    sum(bytes) AS bytes
  FROM line GROUP BY session) l ON l.session = b.session
LEFT JOIN (
  SELECT session, bool_and(prev = before) AS chained
  FROM (SELECT session, prev,
      lag(own_sum, 1, repeat('0', 64)) OVER (PARTITION BY session ORDER BY seq) AS before
    FROM line)
  GROUP BY session) c ON c.session = b.session
LEFT JOIN (
  SELECT session, bool_and(id IN (SELECT id FROM known)) AS known,
    min(pos) FILTER (WHERE id = 'EV01') AS began
  FROM event GROUP BY session) e ON e.session = b.session
WHERE NOT coalesce(l.sound AND l.low = 1 AND l.high = l.n AND l.single = l.n AND l.bytes = b.size
  AND c.chained AND e.known AND e.began = 1001
  AND coalesce(b.said_bytes, 0) <= b.size AND b.procedure_sha256 = (
    SELECT max(sha256) FROM event v WHERE v.session = b.session AND v.id = 'EV01'), false);
