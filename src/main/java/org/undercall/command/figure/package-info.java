/** The command {@code figure}: one class for each thing that can be computed. */
package org.undercall.command.figure;
