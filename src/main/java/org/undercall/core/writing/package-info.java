/** Asks for a procedure, question by question; nothing is guessed. */
package org.undercall.core.writing;
