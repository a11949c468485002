/** The commands, one class each. */
package org.undercall.command;
