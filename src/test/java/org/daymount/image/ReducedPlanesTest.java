package org.daymount.image;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import org.junit.jupiter.api.Test;

/** Means that can be worked out in the head. */
class ReducedPlanesTest {
  private static final Cicp COLOUR = new Cicp(1, 1, 1, false);

  /** 9 x 5 pixels, luma 10 times the row and once the column, colours shared by four. */
  private static YuvFrame planes(int bits) {
    PlaneLayout layout = new PlaneLayout(9, 5, 3, bits, 1, 1, COLOUR);
    int step = 1 << bits - 8;
    int wide = bits == 8 ? 1 : 2;
    byte[][] planes = new byte[3][];
    int[] strides = new int[3];
    for (int i = 0; i < 3; i++) {
      strides[i] = 10 * wide;
      planes[i] = new byte[strides[i] * layout.height(i)];
      for (int y = 0; y < layout.height(i); y++) {
        for (int x = 0; x < layout.width(i); x++) {
          int value = (10 * y + x + 50 * i) * step;
          planes[i][y * strides[i] + x * wide] = (byte) value;
          if (wide == 2) {
            planes[i][y * strides[i] + x * wide + 1] = (byte) (value >> 8);
          }
        }
      }
    }
    return new YuvFrame(layout, planes, strides);
  }

  private static int[] row(YuvFrame planes, int plane, int y) {
    int[] row = new int[plane == 0 ? planes.width() : planes.chromaWidth()];
    planes.row(plane, y, row);
    return row;
  }

  @Test
  void oneOfFourIsTheirMeanAndItsColourItsOwn() {
    for (int bits : new int[] {8, 10}) {
      YuvFrame halved = ReducedPlanes.of(planes(bits), 2);
      assertEquals(8, halved.bits());
      assertEquals(0, halved.chromaAcross());
      // (0 + 1 + 10 + 11) / 4 = 5.5, and 2 more for every two columns; halves go up
      assertArrayEquals(new int[] {6, 8, 10, 12}, row(halved, 0, 0));
      assertArrayEquals(new int[] {26, 28, 30, 32}, row(halved, 0, 1));
      assertArrayEquals(new int[] {50, 51, 52, 53}, row(halved, 1, 0));
      assertArrayEquals(new int[] {110, 111, 112, 113}, row(halved, 2, 1));
    }
  }

  @Test
  void oneOfSixteenHasTheMeanOfFourColours() {
    YuvFrame quarter = ReducedPlanes.of(planes(8), 4);
    assertEquals(2, quarter.width());
    assertEquals(1, quarter.height());
    assertArrayEquals(new int[] {17, 21}, row(quarter, 0, 0)); // 16.5 and 20.5
    assertArrayEquals(new int[] {56, 58}, row(quarter, 1, 0)); // 55.5 and 57.5
  }

  @Test
  void nothingIsDoneToWhatIsNotReduced() {
    YuvFrame planes = planes(10);
    assertSame(planes, ReducedPlanes.of(planes, ReducedPlanes.times(9, 9)));
  }

  @Test
  void theReductionLeavesWhatIsNeeded() {
    assertEquals(4, ReducedPlanes.times(1920, 475));
    assertEquals(8, ReducedPlanes.times(3840, 475));
    assertEquals(2, ReducedPlanes.times(1280, 475));
    assertEquals(1, ReducedPlanes.times(640, 475));
  }
}
