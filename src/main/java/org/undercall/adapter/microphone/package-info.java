/** Frames of sound from a microphone or a WAV file, always 16 kHz, 16 bit, mono. */
package org.undercall.adapter.microphone;
