package org.daymount.sample;

/** A picture in linear light with the distance of each pixel, before the lens and the film. */
final class Exposure {
  final int width;
  final int height;
  final float[] red;
  final float[] green;
  final float[] blue;
  final float[] depth;
  final boolean[] subject;

  /** Whether a body was met, not ground or sky. */
  final boolean[] solid;

  Exposure(int width, int height) {
    this.width = width;
    this.height = height;
    int n = width * height;
    red = new float[n];
    green = new float[n];
    blue = new float[n];
    depth = new float[n];
    subject = new boolean[n];
    solid = new boolean[n];
  }

  void put(int at, double[] rgb, double far, boolean isSubject, boolean isSolid) {
    set(at, rgb);
    depth[at] = (float) far;
    subject[at] = isSubject;
    solid[at] = isSolid;
  }

  void set(int at, double[] rgb) {
    red[at] = (float) Math.min(rgb[0], 12);
    green[at] = (float) Math.min(rgb[1], 12);
    blue[at] = (float) Math.min(rgb[2], 12);
  }

  void get(int at, double[] rgb) {
    rgb[0] = Math.min(red[at], 3);
    rgb[1] = Math.min(green[at], 3);
    rgb[2] = Math.min(blue[at], 3);
  }

  /** Pixels beside a step in depth or a strong step in light. */
  boolean[] edges() {
    boolean[] found = new boolean[width * height];
    for (int row = 0; row < height - 1; row++) {
      for (int column = 0; column < width - 1; column++) {
        int at = row * width + column;
        mark(found, at, at + 1);
        mark(found, at, at + width);
      }
    }
    return found;
  }

  private void mark(boolean[] found, int a, int b) {
    float far = Math.min(depth[a], depth[b]);
    boolean step =
        solid[a] != solid[b] || solid[a] && Math.abs(depth[a] - depth[b]) > .03f * far + .004f;
    float ga = Math.min(green[a], 1);
    float gb = Math.min(green[b], 1);
    boolean contrast = solid[a] && far < 40 && Math.abs(ga - gb) > .22f * (ga + gb + .05f);
    if (step || contrast) {
      found[a] = true;
      found[b] = true;
    }
  }

  /** Larger by Catmull-Rom interpolation in light; distances and masks by the nearest pixel. */
  Exposure enlarged(int newWidth, int newHeight) {
    Exposure out = new Exposure(newWidth, newHeight);
    float[][] from = {red, green, blue};
    float[][] to = {out.red, out.green, out.blue};
    for (int c = 0; c < 3; c++) {
      float[] source = from[c];
      float[] target = to[c];
      float[] wide = new float[newWidth * height];
      for (int y = 0; y < height; y++) {
        for (int x = 0; x < newWidth; x++) {
          double at = (x + .5) * width / newWidth - .5;
          wide[y * newWidth + x] = between(source, y * width, 1, width, at);
        }
      }
      for (int y = 0; y < newHeight; y++) {
        double at = (y + .5) * height / newHeight - .5;
        for (int x = 0; x < newWidth; x++) {
          target[y * newWidth + x] = Math.max(0, between(wide, x, newWidth, height, at));
        }
      }
    }
    for (int y = 0; y < newHeight; y++) {
      for (int x = 0; x < newWidth; x++) {
        int near = y * height / newHeight * width + x * width / newWidth;
        out.depth[y * newWidth + x] = depth[near];
        out.subject[y * newWidth + x] = subject[near];
      }
    }
    return out;
  }

  private static float between(float[] p, int start, int stride, int count, double at) {
    int i = (int) Math.floor(at);
    float t = (float) (at - i);
    float a = p[start + stride * Math.max(0, Math.min(count - 1, i - 1))];
    float b = p[start + stride * Math.max(0, Math.min(count - 1, i))];
    float c = p[start + stride * Math.max(0, Math.min(count - 1, i + 1))];
    float d = p[start + stride * Math.max(0, Math.min(count - 1, i + 2))];
    return b + .5f * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
  }
}
