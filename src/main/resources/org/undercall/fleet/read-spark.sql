-- The lines of the logs of all sessions below a folder, as line and event, for Apache Spark.
-- FOLDER stands for it. Sessions are taken as sound: verify them first.

CREATE OR REPLACE TEMP VIEW raw AS
SELECT element_at(split(_metadata.file_path, '/'), -2) AS session,
  from_json(value, 'seq BIGINT, at STRING, mono BIGINT, heard STRUCT<text: STRING>,
    events ARRAY<STRUCT<id: STRING, step: STRING, title: STRING, revision: STRING,
      sha256: STRING, missing: STRING, intent: STRING, reason: STRING, due: STRING,
      value: STRING, marking: STRING, stage: BIGINT, complete: BOOLEAN>>') AS j
FROM text.`FOLDER/*/log.jsonl`;

CREATE OR REPLACE TEMP VIEW line AS
SELECT session, j.seq AS seq, j.`at` AS wall, unix_millis(to_timestamp(j.`at`)) AS at_ms,
  j.mono AS mono, j.heard.text AS heard
FROM raw;

CREATE OR REPLACE TEMP VIEW event AS
SELECT session, seq, idx, seq * 1000 + idx AS pos, e.id AS id, e.step AS step, e.title AS title,
  e.revision AS revision, e.sha256 AS sha256, e.missing AS missing, e.intent AS intent,
  e.reason AS reason, e.due AS due, e.value AS value, e.marking AS marking, e.stage AS stage,
  e.complete AS complete
FROM (
  SELECT session, j.seq AS seq, place + 1 AS idx, e
  FROM raw LATERAL VIEW posexplode(j.events) exploded AS place, e);
