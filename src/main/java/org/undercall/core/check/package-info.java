/**
 * Judges a procedure before it is used: {@code Procedure} in, findings out.
 *
 * <p>The reader of the file refuses what cannot be walked; this package finds what can be walked
 * and still looks wrong. It is a package of its own, and not a part of {@code fastening}, because
 * {@code fastening} reckons with single values and knows no procedure, while a rule here looks at
 * steps, their order and their neighbours. It depends on {@code procedure}, {@code fastening} and
 * {@code term}. The day on which calibrations are judged is given, never asked for.
 */
package org.undercall.core.check;
