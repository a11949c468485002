/** The commands about many sessions. */
package org.undercall.command.fleet;
