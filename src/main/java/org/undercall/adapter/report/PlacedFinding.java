package org.undercall.adapter.report;

import org.undercall.core.check.Finding;

/**
 * A finding with its place.
 *
 * @param finding what was found
 * @param file the file it is in: the procedure's, or a block's
 * @param pointer JSON pointer to a value of the file
 * @param line line from 1
 * @param column column from 1
 */
public record PlacedFinding(Finding finding, String file, String pointer, int line, int column) {}
