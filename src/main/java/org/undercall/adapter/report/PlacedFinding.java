package org.undercall.adapter.report;

import org.undercall.core.check.Finding;
import org.undercall.port.Fault;

/**
 * A finding with its place.
 *
 * @param finding what was found
 * @param place where it is written, in the procedure's file or in a block's
 */
public record PlacedFinding(Finding finding, Fault.Place place) {}
