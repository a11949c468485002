/**
 * Reckons with threads, strengths, preload, angle stages, torque tools and bush twist.
 *
 * <p>Pure: values in, values out. What depends on friction is a range; what cannot be known is said
 * in the type. A refused value carries a code from FAS-001 on.
 *
 * <p>From {@link org.undercall.core.fastening.Joint} on it goes beyond yield ({@link
 * org.undercall.core.fastening.Stretch}), stacks tolerances, and looks at the seat, the thread and
 * the time after tightening. docs/explanation/engineering.md lists what is there.
 */
package org.undercall.core.fastening;
