package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WrittenTest {
  /** FIPS 180-2, B.1: the SHA-256 of "abc". */
  private static final String SHA256 =
      "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

  @Test
  void whatIsRememberedOfAFileIsReadBack() {
    Written written = new Written(SHA256, 0x0000beef);
    assertEquals(Optional.of(written), Written.parse(written.text()));
  }

  @Test
  void whatAnotherVersionRememberedCountsAsNothing() {
    assertEquals(Optional.empty(), Written.parse(SHA256));
    assertEquals(Optional.empty(), Written.parse(SHA256.toUpperCase() + "0000beef"));
    assertEquals(Optional.empty(), Written.parse(""));
  }

  /** The check value of the CRC-32 of ISO/IEC 8802-3 for these nine digits, from memory. */
  @Test
  void theChecksumIsTheStandardOne() {
    byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
    assertEquals(0xCBF43926, Written.crc32(digits));
  }
}
