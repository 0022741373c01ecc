package org.daymount.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SelectionTest {
  @Test
  void everyPlaceHoldsWhatSortingWouldPutThere() {
    for (int seed = 0; seed < 300; seed++) {
      Random random = new Random(seed);
      float[] values = new float[1 + random.nextInt(60)];
      for (int i = 0; i < values.length; i++) {
        values[i] =
            switch (seed % 3) {
              case 0 -> random.nextFloat();
              case 1 -> random.nextInt(4); // many alike
              default -> (float) random.nextGaussian() * 1e-3f;
            };
      }
      int count = 1 + random.nextInt(values.length);
      float[] sorted = Arrays.copyOf(values, count);
      Arrays.sort(sorted);
      for (int place = 0; place < count; place++) {
        assertEquals(
            sorted[place], Selection.of(values, count, place), "seed " + seed + " " + place);
      }
    }
  }

  @Test
  void sortedAndReversedValuesAreNoHarder() {
    float[] rising = new float[100_000];
    float[] falling = new float[100_000];
    for (int i = 0; i < rising.length; i++) {
      rising[i] = i;
      falling[i] = rising.length - 1 - i;
    }
    assertEquals(777, Selection.of(rising, rising.length, 777));
    assertEquals(777, Selection.of(falling, falling.length, 777));
  }

  @Test
  void aPlaceBeyondTheValuesIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Selection.of(new float[3], 3, 3));
    assertThrows(IllegalArgumentException.class, () -> Selection.of(new float[3], 4, 0));
  }
}
