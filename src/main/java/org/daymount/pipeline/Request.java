package org.daymount.pipeline;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.card.CardStyle;
import org.daymount.crop.CropSettings;
import org.daymount.day.DaySettings;
import org.daymount.ingest.IngestSettings;
import org.daymount.month.Settings;
import org.daymount.page.PageSettings;
import org.daymount.unit.PaperSize;

/**
 * Everything a run is told from outside; nothing below asks the clock, the zone or the environment.
 *
 * @param photos folders and files, in the order they were named * @param leaveOut folders that are
 *     not looked into, such as the output of earlier runs
 * @param note the month note's file
 * @param out where everything is written; choices.json is read there
 * @param pages how the album is made up
 * @param cards size of the story cards; empty: none of one size
 * @param cardStyle how they look, and whether they take the place that is left
 * @param jobs how many pictures are worked on at once
 */
public record Request(
    List<Path> photos,
    List<Path> leaveOut,
    DaySettings daySettings,
    Optional<Path> note,
    OutputLocation out,
    AlbumDefaults defaults,
    CropSettings crop,
    IngestSettings ingest,
    Settings settings,
    Optional<PaperSize> cards,
    CardStyle cardStyle,
    PageSettings pages,
    Locale locale,
    int jobs) {
  public Request {
    photos = List.copyOf(photos);
    leaveOut = List.copyOf(leaveOut);
    if (jobs < 1) {
      throw new IllegalArgumentException("at least one picture must be worked on, was " + jobs);
    }
  }
}
