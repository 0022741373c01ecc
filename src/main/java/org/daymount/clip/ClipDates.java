package org.daymount.clip;

import java.time.Instant;
import java.util.Optional;

/**
 * What a clip says of when it was taken; texts as they stand there.
 *
 * @param quickTime com.apple.quicktime.creationdate
 * @param userData ©day
 * @param created creation time of the movie header: UTC by the standard, local time with some
 *     cameras
 */
public record ClipDates(
    Optional<String> quickTime, Optional<String> userData, Optional<Instant> created) {}
