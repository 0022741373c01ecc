package org.daymount.sheet;

import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class PieceKindTest {
  @Test
  void aPieceWithoutWidthOrHeightIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> new PieceKind(0, 1, true));
    assertThrows(IllegalArgumentException.class, () -> new PieceKind(1, 0, true));
  }
}
