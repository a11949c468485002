/** Frames of sound from a microphone. */
package org.undercall.adapter.microphone;
