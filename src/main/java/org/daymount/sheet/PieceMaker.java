package org.daymount.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.daymount.card.StoryCard;
import org.daymount.crop.Crop;
import org.daymount.photo.Photo;
import org.daymount.pick.DayPick;
import org.daymount.pick.SpacePick;
import org.daymount.unit.PaperSize;

/**
 * Turns picks and story cards into pieces to be cut, in the order of the days. A piece is named by
 * its day and a letter, {@code 07a}; a part of one that needs several sheets by a number more; a
 * card by {@code s}.
 */
public final class PieceMaker {
  private final PaperSize sheet;
  private final List<Piece> pieces = new ArrayList<>();
  private final Map<String, PieceContent> content = new LinkedHashMap<>();
  private final Map<LocalDate, List<List<String>>> labelsOfDay = new HashMap<>();

  public PieceMaker(PaperSize sheet) {
    this.sheet = sheet;
  }

  public void add(DayPick day) {
    List<List<String>> labels = new ArrayList<>();
    for (int space = 0; space < day.spaces().size(); space++) {
      labels.add(add(day, space));
    }
    labelsOfDay.put(day.page().day(), labels);
  }

  private List<String> add(DayPick day, int space) {
    SpacePick pick = day.spaces().get(space);
    if (pick.hero().isEmpty()) {
      return List.of();
    }
    LocalDate date = day.page().day();
    Crop crop = pick.hero().get().crop();
    Photo photo = pick.hero().get().photo();
    Piece whole = new Piece(label(date, letter(space)), crop.piece(), pieces.size());
    List<String> labels = new ArrayList<>();
    for (PieceSplitter.Part part : new PieceSplitter().split(whole, sheet)) {
      pieces.add(new Piece(part.piece().label(), part.piece().size(), pieces.size()));
      content.put(
          part.piece().label(),
          new PieceContent(
              date,
              space,
              Optional.of(new PieceContent.Picture(photo, crop, part.within())),
              Optional.empty()));
      labels.add(part.piece().label());
    }
    return labels;
  }

  public void add(StoryCard card, int afterSpaces) {
    String number = card.count() > 1 ? Integer.toString(card.number()) : "";
    String label = label(card.day(), "s" + number);
    pieces.add(new Piece(label, card.size(), pieces.size()));
    content.put(
        label, new PieceContent(card.day(), afterSpaces, Optional.empty(), Optional.of(card)));
  }

  /** Per space of the day, the labels of its pieces; none where the picture is missing. */
  public List<List<String>> labels(LocalDate day) {
    return labelsOfDay.get(day);
  }

  public List<Piece> pieces() {
    return List.copyOf(pieces);
  }

  public Map<String, PieceContent> content() {
    return content;
  }

  private static String label(LocalDate day, String rest) {
    return String.format(Locale.ROOT, "%02d%s", day.getDayOfMonth(), rest);
  }

  /** a to r, then t to z: s is a card's. Beyond that, letters double. */
  private static String letter(int space) {
    String letters = "abcdefghijklmnopqrtuvwxyz";
    return letters
        .substring(space % letters.length(), space % letters.length() + 1)
        .repeat(1 + space / letters.length());
  }
}
