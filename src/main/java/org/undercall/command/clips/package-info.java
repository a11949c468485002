/** The command that lists and deletes the clips of a session. */
package org.undercall.command.clips;
