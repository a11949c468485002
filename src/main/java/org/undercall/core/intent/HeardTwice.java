package org.undercall.core.intent;

/**
 * The same sound heard in two ways.
 *
 * @param heard with the list of what may be said
 * @param free with all words of the language; may be without words
 */
public record HeardTwice(RecognisedPhrase heard, RecognisedPhrase free) {}
