package org.daymount.look;

import java.util.Arrays;

/**
 * How large a step must be climbed on the way from a pixel to the picture's border: the minimum
 * barrier distance by raster scans (Zhang et al., "Minimum barrier salient object detection at 80
 * FPS", ICCV 2015), summed over L*, a* and b*.
 */
final class MinimumBarrierDistance {
  private static final double NOISE_BLUR = 0.7;
  private static final int SCANS = 3; // as published: down, up, down

  private final Plane channel;
  private final int width;
  private final int height;
  private final float[] distance;
  private final float[] highest;
  private final float[] lowest;

  private MinimumBarrierDistance(Plane channel) {
    this.channel = channel;
    this.width = channel.width();
    this.height = channel.height();
    this.distance = new float[width * height];
    this.highest = channel.values().clone();
    this.lowest = channel.values().clone();
  }

  /** 0 at the border, 1 where the barrier is highest. */
  static Plane of(Lab lab) {
    Plane sum = Plane.empty(lab.light().width(), lab.light().height());
    for (Plane channel : lab.planes()) {
      float[] distance = new MinimumBarrierDistance(channel.blurred(NOISE_BLUR)).distances();
      for (int i = 0; i < distance.length; i++) {
        sum.values()[i] += distance[i];
      }
    }
    return sum.stretched();
  }

  private float[] distances() {
    Arrays.fill(distance, Float.MAX_VALUE);
    for (int x = 0; x < width; x++) {
      distance[x] = 0;
      distance[(height - 1) * width + x] = 0;
    }
    for (int y = 0; y < height; y++) {
      distance[y * width] = 0;
      distance[y * width + width - 1] = 0;
    }
    for (int scan = 0; scan < SCANS; scan++) {
      if (scan % 2 == 0) {
        scanDown();
      } else {
        scanUp();
      }
    }
    return distance;
  }

  private void scanDown() {
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int at = y * width + x;
        if (x > 0) {
          comeFrom(at, at - 1);
        }
        if (y > 0) {
          comeFrom(at, at - width);
        }
      }
    }
  }

  private void scanUp() {
    for (int y = height - 1; y >= 0; y--) {
      for (int x = width - 1; x >= 0; x--) {
        int at = y * width + x;
        if (x < width - 1) {
          comeFrom(at, at + 1);
        }
        if (y < height - 1) {
          comeFrom(at, at + width);
        }
      }
    }
  }

  private void comeFrom(int at, int neighbour) {
    float value = channel.values()[at];
    float high = Math.max(highest[neighbour], value);
    float low = Math.min(lowest[neighbour], value);
    if (high - low < distance[at]) {
      distance[at] = high - low;
      highest[at] = high;
      lowest[at] = low;
    }
  }
}
