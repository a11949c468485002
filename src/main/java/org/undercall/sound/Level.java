package org.undercall.sound;

/**
 * How loud a piece of sound is. A square wave of full scale has an RMS of 0 dBFS, a sine one of -3
 * dBFS; {@link LevelMeter#SILENCE} stands for no sound at all. A constant offset is no sound.
 *
 * @param rms root mean square, in dBFS
 * @param peak the loudest sample, in dBFS
 * @param clipped the share of samples at full scale, from 0 to 1
 */
public record Level(double rms, double peak, double clipped) {}
