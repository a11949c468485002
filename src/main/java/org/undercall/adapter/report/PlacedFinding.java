package org.undercall.adapter.report;

import org.undercall.core.check.Finding;

/**
 * A finding with its place in the file.
 *
 * @param finding what was found
 * @param pointer JSON pointer to a value of the file
 * @param line line from 1
 * @param column column from 1
 */
public record PlacedFinding(Finding finding, String pointer, int line, int column) {}
