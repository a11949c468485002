-- The index of a folder of sessions as indexed, for Apache Spark. FOLDER stands for that folder; a
-- pattern such as bays/*/sessions takes several together.

CREATE OR REPLACE TEMPORARY VIEW indexed (
  session STRING, vehicle STRING, damage STRING, facts STRUCT<
    work: STRUCT<title: STRING, revision: STRING, sha256: STRING, state: STRING, occasion: STRING, verdict: STRING, lines: BIGINT,
      events: BIGINT>,
    times: STRUCT<first_at: STRING, first_ms: BIGINT, last_at: STRING, last_ms: BIGINT,
      elapsed_ms: BIGINT, away_ms: BIGINT, working_ms: BIGINT>,
    steps: ARRAY<STRUCT<step: STRING, state: STRING, reason: STRING, working_ms: BIGINT,
      whole_ms: BIGINT, reopened: BIGINT, begun: BIGINT>>,
    refusals: ARRAY<STRUCT<step: STRING, id: STRING, what: STRING, n: BIGINT>>,
    misheard: ARRAY<STRUCT<heard: STRING, what: STRING, n: BIGINT>>,
    `values`: ARRAY<STRUCT<step: STRING, what: STRING, value: STRING>>,
    due: ARRAY<STRUCT<step: STRING, what: STRING, detail: STRING, kind: STRING>>>)
USING json OPTIONS (path 'FOLDER/index.jsonl');
