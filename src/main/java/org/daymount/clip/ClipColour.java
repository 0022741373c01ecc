package org.daymount.clip;

import java.util.Optional;

/**
 * What the container says of the colours, in code points of ITU-T H.273 (colr, ISO/IEC 14496-12,
 * 12.1.5; QuickTime's nclc has no range).
 */
public record ClipColour(int primaries, int transfer, int matrix, Optional<Boolean> fullRange) {}
