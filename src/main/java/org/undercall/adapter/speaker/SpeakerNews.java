package org.undercall.adapter.speaker;

/**
 * The loudspeaker begins to fail, or works again.
 *
 * @param works whether it works again
 * @param line what to print of it: the fault with its code, or that it is back
 */
public record SpeakerNews(boolean works, String line) {}
