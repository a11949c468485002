package org.undercall.adapter.fleet;

/**
 * What the engine may use.
 *
 * @param memoryMegabytes memory for its work; above that it uses the disk
 * @param threads how many threads
 */
public record Limits(int memoryMegabytes, int threads) {}
