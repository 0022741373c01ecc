package org.daymount.look.detect;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** A network as deep as CenterNet, read where there is little stack. */
class DeepModelsTest {
  private static final long SMALL_STACK_BYTES = 256 << 10;

  /** If this fails it does not fail: it ends the test process. */
  @Test
  void theDetectorsCanBeLoadedFromAThreadWithASmallStack() throws Exception {
    FutureTask<Boolean> loading =
        new FutureTask<>(
            () -> {
              Detectors.load().close();
              return true;
            });
    new Thread(null, loading, "small stack", SMALL_STACK_BYTES).start();
    assertTrue(loading.get(5, TimeUnit.MINUTES));
  }
}
