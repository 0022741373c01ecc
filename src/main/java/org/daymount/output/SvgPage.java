package org.daymount.output;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.Base64;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import org.daymount.card.CardPainter;
import org.daymount.card.StoryCard;
import org.daymount.card.StoryNote;
import org.daymount.crop.Crop;
import org.daymount.image.Previews;
import org.daymount.photo.Photo;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;
import org.daymount.unit.PixelBox;

/** A page as SVG inside HTML; one unit is an inch. Its looks are classes of the style sheet. */
final class SvgPage implements PageCanvas {
  private static final int CARD_PPI = 96;
  private static final int NOTE_PPI = 56;
  private static final double CARD_QUALITY = 0.8;

  private final Html page;
  private final Function<Photo, Optional<String>> addresses;
  private final CardPainter cards = new CardPainter();

  /**
   * @param addresses of the small whole pictures
   */
  SvgPage(Html page, Function<Photo, Optional<String>> addresses) {
    this.page = page;
    this.addresses = addresses;
  }

  void open(PaperSize size, String label) {
    page.raw("<svg class=\"pg\" role=\"img\" viewBox=\"-0.03 -0.03 ")
        .raw(
            "%.3f %.3f\" aria-label=\"",
            size.width().inInches() + 0.06, size.height().inInches() + 0.06)
        .text(label)
        .raw("\">");
  }

  void close() {
    page.raw("</svg>");
  }

  @Override
  public void rectangle(PaperBox box, Look look) {
    page.raw("<rect class=\"pg-%s\" ", look.name().toLowerCase(java.util.Locale.ROOT))
        .raw("%s/>", place(box));
  }

  @Override
  public void picture(Photo photo, Crop crop, PaperBox box, boolean turned) {
    Optional<String> address = addresses.apply(photo);
    if (address.isEmpty()) {
      rectangle(box, Look.MISSING);
      return;
    }
    PixelBox window = crop.window();
    PaperBox drawn = open(box, turned);
    page.raw("<svg %s preserveAspectRatio=\"none\" ", place(drawn))
        .raw("viewBox=\"%d %d %d %d\">", window.x(), window.y(), window.width(), window.height())
        .raw(
            "<image width=\"%d\" height=\"%d\" preserveAspectRatio=\"none\" href=\"%s\"/></svg>",
            photo.size().width(), photo.size().height(), address.get());
    close(turned);
  }

  @Override
  public void card(StoryCard card, PaperBox box, boolean turned) {
    PaperBox drawn = open(box, turned);
    lettering(card.size(), CARD_PPI, g -> cards.paint(card, g), drawn);
    page.raw("<rect class=\"pg-edge\" %s/>", place(drawn));
    close(turned);
  }

  /** The box to draw in; what is turned is drawn upright in a group that lies on its side. */
  private PaperBox open(PaperBox box, boolean turned) {
    if (!turned) {
      return box;
    }
    page.raw(
        "<g transform=\"translate(%.4f %.4f) rotate(90)\">",
        box.right().inInches(), box.y().inInches());
    return PaperBox.at(Length.ZERO, Length.ZERO, box.size().turned());
  }

  private void close(boolean turned) {
    if (turned) {
      page.raw("</g>");
    }
  }

  @Override
  public void note(StoryNote note, PaperBox box) {
    lettering(note.size(), NOTE_PPI, g -> cards.paint(note, g), box);
  }

  private void lettering(PaperSize size, int ppi, Consumer<Graphics2D> letters, PaperBox box) {
    int width = (int) Math.round(size.width().inInches() * ppi);
    int height = (int) Math.round(size.height().inInches() * ppi);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, width, height);
    g.scale(ppi / 72.0, ppi / 72.0);
    letters.accept(g);
    g.dispose();
    byte[] jpeg = Previews.jpeg(image, Math.max(width, height), CARD_QUALITY);
    page.raw("<image %s preserveAspectRatio=\"none\" href=\"data:image/jpeg;base64,", place(box))
        .raw("%s\"/>", Base64.getEncoder().encodeToString(jpeg));
  }

  @Override
  public void word(String word, PaperBox box) throws IOException {
    page.raw(
            "<text class=\"pg-word\" x=\"%.3f\" y=\"%.3f\">",
            box.x().inInches() + box.width().inInches() / 2,
            box.y().inInches() + box.height().inInches() / 2)
        .text(word)
        .raw("</text>");
  }

  private static String place(PaperBox box) {
    return String.format(
        java.util.Locale.ROOT,
        "x=\"%.4f\" y=\"%.4f\" width=\"%.4f\" height=\"%.4f\"",
        box.x().inInches(),
        box.y().inInches(),
        box.width().inInches(),
        box.height().inInches());
  }
}
