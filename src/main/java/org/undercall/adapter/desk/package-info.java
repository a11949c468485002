/** The page at which a procedure is written, and its server: what it is asked is done elsewhere. */
package org.undercall.adapter.desk;
