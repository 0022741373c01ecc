package org.daymount.clip;

import java.time.Duration;

/**
 * A picture of a clip that is coded without the others.
 *
 * @param at from the start of the clip, in whole milliseconds
 * @param from position in the file, in bytes
 * @param length in bytes
 */
public record KeyFrame(Duration at, long from, int length) {}
