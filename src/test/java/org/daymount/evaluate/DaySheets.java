package org.daymount.evaluate;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import javax.imageio.ImageIO;
import org.daymount.evaluate.ContactSheets.Tile;
import org.daymount.evaluate.DayTable.Contender;
import org.daymount.look.Measures.CloseLook;

/**
 * The days for a person to look at, a row each: the picture picked as it is printed, then all of
 * the day, highest score first; a green edge is a person's best, a yellow one the second, a red one
 * never.
 */
final class DaySheets {
  private static final int ROWS = 6;

  private final ContactSheets sheets;
  private final Path folder;
  private final Map<Integer, List<Contender>> days;

  DaySheets(ContactSheets sheets, Path folder, Function<BufferedImage, CloseLook> detector)
      throws IOException {
    this.sheets = sheets;
    this.folder = folder;
    this.days = new DayTable(folder, detector, System.out).ordered();
  }

  void write() throws IOException {
    List<List<Tile>> rows = new ArrayList<>();
    for (Map.Entry<Integer, List<Contender>> day : days.entrySet()) {
      List<Tile> row = new ArrayList<>();
      Contender picked = day.getValue().get(0);
      row.add(
          new Tile(
              ContactSheets.printed(picture(picked.file()), picked.crop()), "day " + day.getKey()));
      for (Contender one : day.getValue()) {
        row.add(new Tile(picture(one.file()), one.file().replaceAll("^0*", ""), edge(one)));
      }
      rows.add(row);
    }
    sheets.write("days", rows, ROWS);
  }

  private static Color edge(Contender one) {
    return switch (one.rank()) {
      case BEST -> Color.GREEN;
      case SECOND -> Color.YELLOW;
      case NEVER -> Color.RED;
      case OTHER -> new Color(0, true);
    };
  }

  private BufferedImage picture(String file) throws IOException {
    Path made = folder.resolve("days").resolve("made").resolve(file);
    Path path = Files.exists(made) ? made : folder.resolve("photos").resolve(file);
    return EvalSet.rgb(ImageIO.read(path.toFile()));
  }
}
