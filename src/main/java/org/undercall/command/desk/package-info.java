/** The desk: one file of a procedure, read, judged, rehearsed and saved for the page. */
package org.undercall.command.desk;
