package org.undercall.adapter.board;

/**
 * A phrase that was pressed or typed on the board.
 *
 * @param state the number of the state it was made for
 * @param words the phrase
 * @param how {@code pressed} for a button, {@code typed} for the field
 */
public record Press(long state, String words, String how) {}
