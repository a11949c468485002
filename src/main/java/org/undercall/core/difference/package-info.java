/**
 * What differs between two procedures, by fastener and step: {@code Procedure} twice in,
 * differences out, the one that can hurt most first. It knows every field of a procedure; a test
 * changes each of them and demands a difference. It depends on {@code procedure} and {@code term}.
 */
package org.undercall.core.difference;
