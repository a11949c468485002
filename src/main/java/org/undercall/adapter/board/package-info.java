/**
 * The page on the screen in the bay, served by this machine: it shows the newest state and hands
 * over what is pressed. It never touches the session.
 */
package org.undercall.adapter.board;
