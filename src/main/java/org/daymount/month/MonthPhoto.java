package org.daymount.month;

import java.time.LocalDate;
import java.util.Optional;
import org.daymount.look.Measures;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;

/**
 * A picture file that was found, usable or not.
 *
 * @param photo empty when not even the header could be read
 * @param group id of its burst
 * @param copyOf the file this one repeats
 * @param used whether it is printed
 * @param problem why it cannot be printed, or is left out of the picking
 */
public record MonthPhoto(
    PhotoFile file,
    Optional<Photo> photo,
    Optional<LocalDate> day,
    Optional<Measures> measures,
    Optional<String> group,
    Optional<PhotoFile> copyOf,
    boolean used,
    Optional<String> problem) {}
