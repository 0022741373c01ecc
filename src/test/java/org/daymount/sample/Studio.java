package org.daymount.sample;

import java.awt.image.BufferedImage;

/** Takes a shot: traces its scene, then lens and film. */
final class Studio {
  private static final double FINENESS = .65;

  private Studio() {}

  /** The upright picture at {@code scale} times its size. */
  static BufferedImage take(Shot shot, double scale) {
    int w = (int) Math.round(shot.width() * scale);
    int h = (int) Math.round(shot.height() * scale);
    Shot.Stage stage = shot.stage().get();
    Exposure e = trace(stage.scene(), stage.view(), w, h);
    double size = Math.max(w, h) / 2000.0;
    double[] smear = shot.smear();
    if (smear[0] != 0 || smear[1] != 0 || smear[2] != 0) {
      Exposure empty = trace(stage.scene().emptied(), stage.view(), w, h);
      Lens.smear(e, empty, smear[0] * size, smear[1] * size, smear[2] * size);
    }
    Lens.soften(e, stage.view());
    double[] shake = shot.shake();
    if (shake[0] != 0) {
      Lens.shake(e, shake[0] * size, shake[1] * size, shake[2] * size);
    }
    if (shot.rain()) {
      Lens.rain(e, 21);
    }
    Mood mood = stage.scene().mood;
    boolean lamps = !stage.scene().lamps.isEmpty();
    Lens.bloom(e, mood.night() || lamps ? .5 : 1.4, mood.night() ? .35 : .12);
    return Film.develop(e, mood.exposure(), shot.grain(), shot.name().hashCode() & 0xffff);
  }

  /** Traced at {@link #FINENESS} of the size: a phone's sensor has no finer colour either. */
  private static Exposure trace(Scene scene, View view, int w, int h) {
    int tracedWidth = (int) Math.round(w * FINENESS);
    int tracedHeight = (int) Math.round(h * FINENESS);
    return new Tracer(scene, view, tracedWidth, tracedHeight).trace().enlarged(w, h);
  }
}
