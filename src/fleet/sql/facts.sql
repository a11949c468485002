-- The facts of the index as tables. The same for DuckDB and for Apache Spark; needs indexed.

CREATE OR REPLACE TEMP VIEW session_fact AS
SELECT session, vehicle, damage, work.*, times.*
FROM (SELECT session, vehicle, damage, facts.work AS work, facts.times AS times FROM indexed) i;

CREATE OR REPLACE TEMP VIEW step_fact AS
SELECT session, r.* FROM (SELECT session, explode(facts.steps) AS r FROM indexed) i;

CREATE OR REPLACE TEMP VIEW refusal_fact AS
SELECT session, r.* FROM (SELECT session, explode(facts.refusals) AS r FROM indexed) i;

CREATE OR REPLACE TEMP VIEW misheard_fact AS
SELECT session, r.* FROM (SELECT session, explode(facts.misheard) AS r FROM indexed) i;

CREATE OR REPLACE TEMP VIEW value_fact AS
SELECT session, r.* FROM (SELECT session, explode(facts.values) AS r FROM indexed) i;

CREATE OR REPLACE TEMP VIEW due_fact AS
SELECT session, r.* FROM (SELECT session, explode(facts.due) AS r FROM indexed) i;

-- The sessions that are the measure of a comparison, no rehearsals; put another condition here.
CREATE OR REPLACE TEMP VIEW base AS
SELECT session FROM session_fact WHERE state <> 'damaged' AND occasion = 'work';
