-- The index of a folder of sessions as indexed, for DuckDB. FOLDER stands for that folder; a pattern
-- such as bays/*/sessions takes several together.

CREATE OR REPLACE TEMP MACRO explode(x) AS unnest(x);
CREATE OR REPLACE TEMP MACRO percentile(x, p) AS quantile_cont(x, p);

CREATE OR REPLACE TEMP VIEW indexed AS
SELECT * FROM read_json('FOLDER/index.jsonl', format = 'newline_delimited', columns = {
  session: 'VARCHAR', vehicle: 'VARCHAR', damage: 'VARCHAR', facts: 'STRUCT(
    work STRUCT(title VARCHAR, revision VARCHAR, sha256 VARCHAR, state VARCHAR, occasion VARCHAR,
      verdict VARCHAR, lines BIGINT, events BIGINT),
    times STRUCT(first_at VARCHAR, first_ms BIGINT, last_at VARCHAR, last_ms BIGINT,
      elapsed_ms BIGINT, away_ms BIGINT, working_ms BIGINT),
    steps STRUCT(step VARCHAR, state VARCHAR, reason VARCHAR, working_ms BIGINT, whole_ms BIGINT,
      reopened BIGINT, begun BIGINT)[],
    refusals STRUCT(step VARCHAR, id VARCHAR, what VARCHAR, n BIGINT)[],
    misheard STRUCT(heard VARCHAR, what VARCHAR, n BIGINT)[],
    "values" STRUCT(step VARCHAR, what VARCHAR, value VARCHAR)[],
    due STRUCT(step VARCHAR, what VARCHAR, detail VARCHAR, kind VARCHAR)[])'});
