/** Procedures from tables, and tables from procedures. */
package org.undercall.command.table;
