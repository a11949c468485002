/**
 * Reckons with threads, strengths, preload, angle stages, torque tools and bush twist.
 *
 * <p>Pure: values in, values out. What depends on friction is a range; what cannot be known is said
 * in the type. A refused value carries a code from FAS-001 on.
 */
package org.undercall.core.fastening;
