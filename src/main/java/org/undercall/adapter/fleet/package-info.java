/** Questions to many sessions at once, by DuckDB on their log files. */
package org.undercall.adapter.fleet;
