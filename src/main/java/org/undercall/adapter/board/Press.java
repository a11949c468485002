package org.undercall.adapter.board;

import org.undercall.port.Heard;

/**
 * A phrase that was pressed or typed on the board.
 *
 * @param state the number of the state it was made for
 * @param words the phrase
 * @param how pressed for a button, typed for the field
 */
public record Press(long state, String words, Heard.How how) {}
