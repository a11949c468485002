/**
 * What the board in the bay shows, made from a session: texts and numbers, nothing about a page.
 */
package org.undercall.core.board;
