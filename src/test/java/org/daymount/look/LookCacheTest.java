package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.daymount.cache.Cache;
import org.daymount.look.Measures.CloseLook;
import org.daymount.photo.Photo;
import org.daymount.testphoto.PhotoBuilder;
import org.daymount.unit.PixelBox;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LookCacheTest {
  private static final String MAKER = "test";

  @TempDir Path folder;
  private Cache cache = Cache.empty(MAKER);

  private LookCache looks() {
    cache = Cache.empty(MAKER);
    return new LookCache(cache);
  }

  private LookCache afterARun() throws IOException {
    cache.write(file());
    return new LookCache(Cache.read(List.of(file()), MAKER));
  }

  private Path file() {
    return folder.resolve(Cache.FILE);
  }

  @Test
  void measuresComeBackBitForBit() throws IOException {
    Random chance = new Random(11);
    for (int i = 0; i < 200; i++) {
      Measures measures = measures(chance);
      LookCache memory = looks();
      memory.keepFirstLook(photo("a"), measures);
      Measures back = afterARun().firstLook(photo("a")).orElseThrow();
      assertEquals(measures, back);
      assertArrayEquals(measures.map().shares(), back.map().shares());
      assertEquals(
          Double.doubleToRawLongBits(measures.sharpness()),
          Double.doubleToRawLongBits(back.sharpness()));
    }
  }

  @Test
  void closeLooksComeBackForTheSameFramesInTheSameOrderOnly() throws IOException {
    CloseLook look =
        new CloseLook(
            List.of(new Face(new PixelBox(-3, 4, 50, 60), 0.1 + 0.2)),
            List.of(new Subject(new PixelBox(1, 2, 3, 4), "dog", 1 / 3.0)),
            1e-300);
    LookCache memory = looks();
    List<Photo> frames = List.of(photo("a"), photo("b"));
    memory.keepCloseLook(frames, List.of(Optional.of(look), Optional.empty()));
    LookCache later = afterARun();
    assertEquals(
        Optional.of(List.of(Optional.of(look), Optional.empty())), later.closeLook(frames));
    assertTrue(later.closeLook(List.of(photo("b"), photo("a"))).isEmpty());
    assertTrue(later.closeLook(List.of(photo("a"))).isEmpty());
  }

  @Test
  void whatNoMeasuringGivesIsMeasuredAgain() throws IOException {
    Map<String, CloseLook> impossible =
        Map.of(
            "no number", look(new PixelBox(1, 2, 3, 4), Double.NaN),
            "over 1", look(new PixelBox(1, 2, 3, 4), 1.5),
            "beside the picture", look(new PixelBox(1_000_000, 2, 3, 4), 0.7));
    for (Map.Entry<String, CloseLook> one : impossible.entrySet()) {
      LookCache memory = looks();
      memory.keepCloseLook(List.of(photo("a")), List.of(Optional.of(one.getValue())));
      assertTrue(afterARun().closeLook(List.of(photo("a"))).isEmpty(), one.getKey());
      Files.delete(file());
    }
    LookCache sound = looks();
    sound.keepCloseLook(
        List.of(photo("a")), List.of(Optional.of(look(new PixelBox(1, 2, 3, 4), 0.7))));
    assertTrue(afterARun().closeLook(List.of(photo("a"))).isPresent());
  }

  private static CloseLook look(PixelBox box, double confidence) {
    return new CloseLook(List.of(new Face(box, confidence)), List.of(), 0.5);
  }

  private static Measures measures(Random chance) {
    List<Float> moments = new ArrayList<>();
    for (int i = 0; i < 27; i++) {
      moments.add(chance.nextFloat());
    }
    float[] weights = new float[48 * 36];
    for (int i = 0; i < weights.length; i++) {
      weights[i] = chance.nextFloat() * chance.nextFloat();
    }
    byte[] lumas = new byte[1024];
    chance.nextBytes(lumas);
    return new Measures(
        chance.nextDouble() * 1000,
        chance.nextDouble(),
        chance.nextDouble(),
        new Fingerprint(chance.nextLong(), chance.nextLong(), moments, new Miniature(lumas)),
        new SaliencyMap(48, 36, weights),
        Optional.empty());
  }

  private Photo photo(String sha256) {
    return PhotoBuilder.at(folder, sha256 + ".jpg").sha256(sha256).photo();
  }
}
