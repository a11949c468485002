/** The command {@code doctor}: one check for each thing that the work needs. */
package org.undercall.command.doctor;
