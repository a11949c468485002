/**
 * The measurement of hearing: {@code mvn -Phearing verify}. It prints figures and fails on none.
 */
package org.undercall.hearing;
