package org.daymount.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.daymount.crop.Crop;
import org.daymount.crop.CropSettings;
import org.daymount.image.Pictures;
import org.daymount.look.AnalysedPhoto;
import org.daymount.look.Face;
import org.daymount.look.Measures;
import org.daymount.look.Subject;
import org.daymount.month.MonthJson;
import org.daymount.output.LookDrawing;
import org.daymount.photo.Photo;
import org.daymount.pipeline.PhotoInspector;
import org.daymount.pipeline.PhotoInspector.Inspected;
import org.daymount.pipeline.Progress;
import org.daymount.unit.PixelBox;
import org.daymount.unit.Ppi;
import org.daymount.unit.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code daymount look}: all that was read from and measured in single photos. */
@Command(
    name = "look",
    mixinStandardHelpOptions = true,
    abbreviateSynopsis = true,
    headerHeading = "For example: daymount look IMG_0412.JPG --draw seen.jpg%n%n",
    header = "Tells all that is read from single pictures and measured in them.",
    description = {"", "The crops that would be proposed for the usual spaces are listed too.", ""},
    sortOptions = false)
final class LookCommand extends ContextCommand {
  @Spec CommandSpec spec;
  @Mixin PhotoOptions photos;

  @Option(
      names = "--draw",
      paramLabel = "FILE",
      description =
          "Writes the picture to this JPEG, with what was found and the crops drawn on it; for one"
              + " picture at a time.")
  Path draw;

  @Mixin ReportOptions talk;

  LookCommand(CommandContext context) {
    super(context);
  }

  @Override
  public Integer call() throws IOException {
    Pictures pictures = new Pictures();
    List<Path> files = Requests.photos(spec, context, photos);
    boolean quietly = talk.quiet || files.size() == 1 && Files.isRegularFile(files.get(0));
    Progress progress =
        quietly ? Progress.SILENT : new TerminalProgress(context.err(), context.terminal());
    List<Inspected> all =
        new PhotoInspector(pictures, progress)
            .inspect(
                files,
                Requests.ingest(spec, context, photos, files),
                Requests.days(photos),
                CropSettings.of(new Ppi(300), new Ppi(200)),
                Requests.jobs(spec, photos));
    all.stream()
        .flatMap(inspected -> inspected.withoutDetectors().stream())
        .findFirst()
        .ifPresent(why -> context.err().println("note: " + why));
    if (talk.json) {
      byte[] json =
          new MonthJson(Version.tool(), photos.verboseRecord)
              .writePhotos(all.stream().map(Inspected::photo).toList());
      context.out().print(new String(json, StandardCharsets.UTF_8));
    } else {
      all.forEach(inspected -> print(context.out(), inspected));
    }
    if (draw != null) {
      draw(pictures, all);
    }
    boolean unusable =
        all.stream().anyMatch(i -> i.problem().filter(p -> p.kind().isUnusable()).isPresent());
    return unusable ? ExitCode.SOME_PHOTOS_UNUSABLE : ExitCode.DONE;
  }

  private void draw(Pictures pictures, List<Inspected> all) throws IOException {
    if (all.size() != 1 || all.get(0).looked().isEmpty()) {
      throw new ParameterException(
          spec.commandLine(), "--draw takes one photo that can be read, there are " + all.size());
    }
    Path target = context.here().resolve(draw);
    if (Files.exists(target) && Files.isSameFile(target, all.get(0).photo().file().path())) {
      throw new ParameterException(
          spec.commandLine(), "--draw would replace the photo itself; name another file");
    }
    byte[] jpeg = new LookDrawing(pictures).jpeg(all.get(0).looked().get(), all.get(0).crops());
    Files.write(target, jpeg);
    context.err().println("drawn: " + TerminalEscaper.of(draw.toString()));
  }

  private void print(PrintWriter out, Inspected inspected) {
    out.println(TerminalEscaper.of(inspected.photo().file().name()));
    inspected.photo().photo().ifPresent(photo -> header(out, inspected, photo));
    inspected.problem().ifPresent(p -> line(out, "problem", p.text()));
    inspected.looked().ifPresent(looked -> measures(out, looked));
    for (Crop crop : inspected.crops()) {
      String reasons = crop.reasons().isEmpty() ? "" : "; " + String.join("; ", crop.reasons());
      line(
          out,
          "as " + Units.of(context.locale()).sized(crop.piece()),
          crop.fit().word() + ", " + crop.ppi() + ", " + box(crop.window()) + reasons);
    }
    out.println();
  }

  private static void header(PrintWriter out, Inspected inspected, Photo photo) {
    line(
        out,
        "taken",
        photo.taken().local().map(Object::toString).orElse("unknown")
            + photo.taken().offset().map(offset -> " " + offset).orElse("")
            + " (from "
            + photo.taken().from().word()
            + ")");
    line(out, "day", inspected.photo().day().map(Object::toString).orElse("unknown"));
    photo.model().ifPresent(model -> line(out, "camera", model + " (as --clock wants it)"));
    line(
        out,
        "picture",
        photo.format().name()
            + ", "
            + photo.size()
            + " upright pixels, "
            + photo.shape().word()
            + ", orientation "
            + (photo.orientationTagged() ? photo.orientation().exif() : "not given"));
    photo.screenshot().ifPresent(why -> line(out, "screen", why));
    line(out, "sha256", photo.sha256());
  }

  private static void measures(PrintWriter out, AnalysedPhoto looked) {
    Measures measures = looked.measures();
    line(out, "light", number(measures.exposure()) + " of 1");
    line(out, "crispness", number(measures.clarity()) + " of 1");
    line(out, "sharpness", number(measures.sharpness()) + " (for comparing within a burst)");
    measures
        .close()
        .filter(close -> close.sharpnessThere() > 0)
        .ifPresent(close -> line(out, "  of subject", number(close.sharpnessThere())));
    for (Face face : measures.faces()) {
      line(out, "face", box(face.box()) + ", " + number(face.confidence()) + " sure");
    }
    for (Subject subject : measures.subjects()) {
      line(out, subject.what(), box(subject.box()) + ", " + number(subject.confidence()) + " sure");
    }
  }

  private static String box(PixelBox box) {
    return box.width() + " x " + box.height() + " at " + box.x() + "," + box.y();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  private static void line(PrintWriter out, String name, String value) {
    out.printf(Locale.ROOT, "  %-12s %s%n", name, TerminalEscaper.of(value));
  }
}
