package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WideToSrgbTest {
  private static final CodedColour HLG = new CodedColour(9, 18, 9, false);
  private static final CodedColour PQ = new CodedColour(9, 16, 9, false);

  /** Report ITU-R BT.2408, table 1: HDR reference white and 18% grey at 203 and 26 cd/m². */
  @Test
  void referenceLevelsAreThoseOfTheReport() {
    assertEquals(203, WideToSrgb.pqLight(0.58), 2);
    assertEquals(26, WideToSrgb.pqLight(0.38), 1);
    assertEquals(203, 1000 * Math.pow(WideToSrgb.hlgScene(0.75), 1.2), 1);
    assertEquals(26, 1000 * Math.pow(WideToSrgb.hlgScene(0.38), 1.2), 1);
  }

  /** Rec. ITU-R BT.2100, tables 4 and 5: the ends of both curves, and the middle of HLG's. */
  @Test
  void curvesEndWhereTheRecommendationEndsThem() {
    assertEquals(10_000, WideToSrgb.pqLight(1), 1e-6);
    assertEquals(0, WideToSrgb.pqLight(0), 1e-12);
    assertEquals(1, WideToSrgb.hlgScene(1), 1e-6);
    assertEquals(1.0 / 12, WideToSrgb.hlgScene(0.5), 1e-12);
    assertEquals(0.58, WideToSrgb.pqSignal(WideToSrgb.pqLight(0.58)), 1e-12);
  }

  /** Report ITU-R BT.2390, 5.4.1: the peak of the source becomes that of the target, in order. */
  @Test
  void brightLightIsRolledOffAndNeverTurnsBack() {
    assertEquals(50, WideToSrgb.rolledOff(50), 1e-9);
    assertEquals(WideToSrgb.WHITE, WideToSrgb.rolledOff(WideToSrgb.PEAK), 1e-6);
    double before = 0;
    for (double light = 1; light <= 1000; light++) {
      double shown = WideToSrgb.rolledOff(light);
      assertTrue(shown > before && shown <= light + 1e-9, light + " becomes " + shown);
      before = shown;
    }
  }

  @Test
  void greyStaysGreyAndTheEndsAreBlackAndWhite() {
    for (CodedColour colour : new CodedColour[] {HLG, PQ}) {
      WideToSrgb conversion = new WideToSrgb(colour, 10);
      assertEquals(0, conversion.rgb(64, 512, 512));
      assertEquals(0xffffff, conversion.rgb(940, 512, 512));
      for (int y = 64; y < 940; y += 7) {
        int grey = conversion.rgb(y, 512, 512);
        assertEquals(grey >> 16, grey >> 8 & 0xff, 1);
        assertEquals(grey >> 16, grey & 0xff, 1);
      }
    }
  }

  /** What zimg (in ffmpeg's zscale) makes of colours below the roll-off, in linear BT.709. */
  @Tag("slow")
  @Test
  void belowTheRollOffPqIsAsZimgConvertsIt(@TempDir Path folder) throws IOException {
    Tool ffmpeg = Tool.orSkip("ffmpeg", "-version");
    int[][] patches = {
      {200, 512, 512},
      {300, 512, 512},
      {380, 512, 512},
      {350, 480, 540},
      {350, 540, 490},
      {400, 500, 530},
      {300, 530, 520},
      {420, 505, 505}
    };
    int side = 16;
    ByteBuffer raw =
        ByteBuffer.allocate(patches.length * side * side * 3).order(ByteOrder.LITTLE_ENDIAN);
    for (int plane = 0; plane < 3; plane++) {
      int across = plane == 0 ? side : side / 2;
      for (int y = 0; y < across; y++) {
        for (int[] patch : patches) {
          for (int x = 0; x < across; x++) {
            raw.putShort((short) patch[plane]);
          }
        }
      }
    }
    Path in = folder.resolve("in.raw");
    Path out = folder.resolve("out.raw");
    Files.write(in, raw.array());
    String size = patches.length * side + "x" + side;
    ffmpeg.run(
        "-y",
        "-v",
        "error",
        "-f",
        "rawvideo",
        "-pix_fmt",
        "yuv420p10le",
        "-s",
        size,
        "-i",
        in.toString(),
        "-vf",
        "zscale=matrixin=2020_ncl:transferin=smpte2084:primariesin=2020:rangein=limited"
            + ":matrix=gbr:transfer=linear:primaries=709:range=full:npl=203,format=gbrpf32le",
        "-f",
        "rawvideo",
        "-pix_fmt",
        "gbrpf32le",
        out.toString());
    ByteBuffer linear = ByteBuffer.wrap(Files.readAllBytes(out)).order(ByteOrder.LITTLE_ENDIAN);
    int plane = patches.length * side * side * 4;
    assertEquals(3 * plane, linear.limit());
    WideToSrgb ours = new WideToSrgb(PQ, 10);
    int[] order = {2, 0, 1}; // red, green and blue among green, blue and red
    for (int i = 0; i < patches.length; i++) {
      int[] patch = patches[i];
      int rgb = ours.rgb(patch[0], patch[1], patch[2]);
      for (int channel = 0; channel < 3; channel++) {
        int at = order[channel] * plane + ((side / 2) * patches.length * side + i * side + 8) * 4;
        double light = Math.max(0, linear.getFloat(at));
        double expected =
            255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055);
        assertEquals(
            expected, rgb >> 16 - 8 * channel & 0xff, 2, "patch " + i + ", channel " + channel);
      }
    }
  }
}
