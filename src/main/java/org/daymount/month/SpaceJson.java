package org.daymount.month;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.daymount.album.Space;
import org.daymount.crop.Crop;
import org.daymount.photo.ExifOrientation;
import org.daymount.photo.Photo;
import org.daymount.photo.PhotoFile;
import org.daymount.pick.Score;
import org.daymount.pick.ScoredCandidate;
import org.daymount.pick.SpacePick;
import org.daymount.unit.Length;
import org.daymount.unit.Orientation;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;

/** An entry of a day's spaces[]. */
record SpaceJson(
    String space,
    Orientation direction,
    boolean directionFixed,
    boolean onMat,
    Length reveal,
    Optional<String> photo,
    Optional<String> folder,
    SpacePick.ChosenBy chosenBy,
    Optional<Double> score,
    Map<String, Double> scoreParts,
    List<String> reasons,
    Optional<PixelBox> crop,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Integer> quarterTurns,
    Optional<Double> ppi,
    Optional<Crop.Fit> fit,
    Length pieceWidth,
    Length pieceHeight,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Length> pictureWidth,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<Length> pictureHeight,
    Optional<String> piece,
    List<String> pieces,
    List<RunnerUp> runnersUp) {

  /** One of the next best. */
  record RunnerUp(String file, double score, List<String> reasons) {
    static RunnerUp of(ScoredCandidate candidate) {
      return new RunnerUp(
          candidate.photo().file().name(), candidate.score().total(), candidate.reasons());
    }
  }

  /**
   * @param asTagged how photos lie by their own tags
   */
  static SpaceJson of(
      MonthSpace monthSpace, Map<PhotoFile, ExifOrientation> asTagged, FolderNames folders) {
    SpacePick pick = monthSpace.pick();
    Space space = pick.space();
    Optional<Score> score = pick.hero().map(ScoredCandidate::score);
    Optional<Photo> photo = pick.hero().map(ScoredCandidate::photo);
    Optional<Integer> turns = photo.map(shown -> turns(shown, asTagged));
    Optional<Crop> crop = pick.hero().map(ScoredCandidate::crop);
    PaperSize piece = crop.map(Crop::piece).orElseGet(() -> space.pieceSize(pick.direction()));
    return new SpaceJson(
        space.name(),
        pick.direction(),
        space.direction().isPresent(),
        space.onMat(),
        space.reveal().orElse(Length.ZERO),
        photo.map(shown -> shown.file().name()),
        photo.map(shown -> folders.of(shown.file())),
        pick.chosenBy(),
        score.map(Score::total),
        parts(score),
        pick.reasons(),
        crop.map(drawn -> drawn.window().turned(photo.get().size(), -turns.get())),
        turns,
        crop.map(drawn -> drawn.ppi().value()),
        crop.map(Crop::fit),
        piece.width(),
        piece.height(),
        crop.map(drawn -> drawn.picture().width()),
        crop.map(drawn -> drawn.picture().height()),
        monthSpace.pieces().stream().findFirst(),
        monthSpace.pieces(),
        pick.runnersUp().stream().map(RunnerUp::of).toList());
  }

  private static int turns(Photo shown, Map<PhotoFile, ExifOrientation> asTagged) {
    ExifOrientation tagged = asTagged.getOrDefault(shown.file(), shown.orientation());
    return shown.orientation().quarterTurnsFrom(tagged);
  }

  private static Map<String, Double> parts(Optional<Score> score) {
    Map<String, Double> parts = new LinkedHashMap<>();
    score.ifPresent(all -> all.parts().forEach(part -> parts.put(part.name(), part.value())));
    return parts;
  }
}
