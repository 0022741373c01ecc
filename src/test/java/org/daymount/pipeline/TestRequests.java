package org.daymount.pipeline;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.daymount.album.AlbumDefaults;
import org.daymount.card.CardStyle;
import org.daymount.crop.CropSettings;
import org.daymount.day.DayNumbers;
import org.daymount.day.DaySettings;
import org.daymount.day.DayStart;
import org.daymount.image.Lightening;
import org.daymount.ingest.ClockCorrections;
import org.daymount.ingest.IngestSettings;
import org.daymount.month.Settings;
import org.daymount.page.PageSettings;
import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/** What a person asks for who leaves all options but the resolution as they are. */
final class TestRequests {
  private TestRequests() {}

  static Request of(Path photos, Optional<Path> note, OutputLocation place, CropSettings crop) {
    return new Request(
        List.of(photos),
        List.of(),
        new DaySettings(DayStart.FOUR, Optional.empty(), DayNumbers.ALL),
        note,
        place,
        AlbumDefaults.STANDARD,
        crop,
        new IngestSettings(ClockCorrections.NONE, LocalDate.of(2026, 7, 4), ZoneOffset.UTC),
        new Settings(
            DayStart.FOUR.at(),
            "4x6",
            Length.inchFraction(1, 8),
            crop.wanted(),
            crop.minimum(),
            PaperSize.inches(4, 6),
            Length.ZERO,
            Settings.Paper.SHEET,
            Length.ZERO,
            Lightening.NONE),
        Optional.empty(),
        CardStyle.USUAL,
        PageSettings.STANDARD,
        Locale.ENGLISH,
        2);
  }
}
