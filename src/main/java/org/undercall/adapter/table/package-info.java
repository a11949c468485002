/** Tables of torques: CSV and XLSX files to a procedure, and back to CSV. */
package org.undercall.adapter.table;
