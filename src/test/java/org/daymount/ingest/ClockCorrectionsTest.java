package org.daymount.ingest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ClockCorrectionsTest {
  @ParameterizedTest
  @CsvSource({
    "Tarn T4=+1h, PT1H",
    "Tarn T4=-25m, PT-25M",
    "Tarn T4=+1h30m, PT1H30M",
    "Tarn T4=-1d2h, PT-26H",
    "Tarn T4=+1d, PT24H",
    "tarn t4 = +45s, PT45S"
  })
  void aCorrectionIsASignAndUnits(String text, Duration expected) {
    ClockCorrections clocks = ClockCorrections.parse(List.of(text));
    assertEquals(Optional.of(expected), clocks.correctionFor("TARN T4"));
    assertEquals(Optional.empty(), clocks.correctionFor("Tarn T40"));
  }

  @Test
  void aModelMayHoldAnEqualsSign() {
    ClockCorrections clocks = ClockCorrections.parse(List.of("A=B=+1h"));
    assertEquals(Optional.of(Duration.ofHours(1)), clocks.correctionFor("a=b"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Tarn",
        "Tarn=",
        "Tarn=1h",
        "=+1h",
        "Tarn=+",
        "Tarn=+h",
        "Tarn=+1h1d",
        "T=+1w"
      })
  void anythingElseIsNamed(String text) {
    var e =
        assertThrows(IllegalArgumentException.class, () -> ClockCorrections.parse(List.of(text)));
    assertTrue(e.getMessage().contains("\"" + text + "\""), e.getMessage());
  }

  @Test
  void aModelGivenTwiceIsNamed() {
    assertThrows(
        IllegalArgumentException.class, () -> ClockCorrections.parse(List.of("T=+1h", "t=+2h")));
  }

  @Test
  void modelsThatNoPhotoHasAreTold() {
    ClockCorrections clocks = ClockCorrections.parse(List.of("Tarn T4=+1h", "Tran T4=+1h"));
    assertEquals(List.of("tran t4"), clocks.unmatched(Set.of("TARN T4", "Orrery 9")));
  }
}
