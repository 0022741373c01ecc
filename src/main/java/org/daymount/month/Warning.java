package org.daymount.month;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.photo.PhotoFile;

/**
 * Something a person should know about a file, a day or the whole month.
 *
 * @param code one or two words with a hyphen, stable: {@code cut-off}, {@code missing-picture}
 */
public record Warning(
    String code, Optional<PhotoFile> file, Optional<LocalDate> day, String text) {}
