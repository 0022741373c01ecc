package org.daymount.output;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class WrittenTest {
  /** The check value of the CRC-32 of ISO/IEC 8802-3 for these nine digits, from memory. */
  @Test
  void theChecksumIsTheStandardOne() {
    byte[] digits = "123456789".getBytes(StandardCharsets.US_ASCII);
    assertEquals(0xCBF43926, Written.crc32(digits));
  }
}
