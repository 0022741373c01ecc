package org.daymount.image;

import java.io.Closeable;
import java.io.IOException;

/** Decodes the tiles of one picture, one after the other. For one thread. */
interface TileReader extends Closeable {
  /**
   * @param coding the same object for all tiles that are coded alike
   * @return valid until the next call
   */
  YuvFrame decode(TileCoding coding, byte[] coded) throws IOException;

  @Override
  void close();

  /** In this process: a fault of the native decoder would end it. */
  static TileReader here() {
    return new TileReader() {
      private TileDecoder decoder;

      @Override
      public YuvFrame decode(TileCoding coding, byte[] coded) throws IOException {
        if (decoder == null || decoder.coding() != coding) {
          close();
          decoder = new TileDecoder(coding);
        }
        return decoder.decode(coded).copied();
      }

      @Override
      public void close() {
        if (decoder != null) {
          decoder.close();
          decoder = null;
        }
      }
    };
  }
}
