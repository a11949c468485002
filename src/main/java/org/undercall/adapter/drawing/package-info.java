/** Draws what was computed and writes it as SVG files. */
package org.undercall.adapter.drawing;
