-- The tables of the index. It is a cache: made from the logs, and made anew when it is deleted.

CREATE TABLE IF NOT EXISTS made (version VARCHAR, made_at VARCHAR);

CREATE TABLE IF NOT EXISTS file_fact (session VARCHAR, stamp VARCHAR, vehicle VARCHAR,
  damage VARCHAR);

CREATE TABLE IF NOT EXISTS session_fact (session VARCHAR, title VARCHAR, revision VARCHAR,
  sha256 VARCHAR, first_at VARCHAR, first_ms BIGINT, last_at VARCHAR, last_ms BIGINT,
  n_lines BIGINT, n_events BIGINT, elapsed_ms BIGINT, away_ms BIGINT, working_ms BIGINT,
  state VARCHAR);

CREATE TABLE IF NOT EXISTS step_fact (session VARCHAR, step VARCHAR, state VARCHAR,
  reason VARCHAR, working_ms BIGINT, whole_ms BIGINT, reopened BIGINT, first_touch BIGINT);

CREATE TABLE IF NOT EXISTS refusal_fact (session VARCHAR, step VARCHAR, id VARCHAR, what VARCHAR,
  n BIGINT);

CREATE TABLE IF NOT EXISTS misheard_fact (session VARCHAR, heard VARCHAR, what VARCHAR, n BIGINT);

CREATE TABLE IF NOT EXISTS value_fact (session VARCHAR, step VARCHAR, what VARCHAR, value VARCHAR);

CREATE TABLE IF NOT EXISTS due_fact (session VARCHAR, step VARCHAR, what VARCHAR, detail VARCHAR);
