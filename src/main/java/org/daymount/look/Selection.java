package org.daymount.look;

/**
 * The value at a place in the order of size, without sorting all of them (Hoare's "Find", Algorithm
 * 65, Communications of the ACM 4, 1961). It gives what sorting would, in linear time.
 */
final class Selection {
  private Selection() {}

  /**
   * @param values none of them NaN; their order is changed
   * @param count how many of them take part, from the first on
   * @param place 0 for the smallest of those
   */
  static float of(float[] values, int count, int place) {
    if (place < 0 || place >= count || count > values.length) {
      throw new IllegalArgumentException(
          "no value " + place + " of " + count + " in " + values.length);
    }
    int low = 0;
    int high = count - 1;
    while (low < high) {
      float pivot = median(values[low], values[(low + high) >>> 1], values[high]);
      int left = low;
      int right = high;
      while (left <= right) {
        while (values[left] < pivot) {
          left++;
        }
        while (values[right] > pivot) {
          right--;
        }
        if (left <= right) {
          float kept = values[left];
          values[left++] = values[right];
          values[right--] = kept;
        }
      }
      if (place <= right) {
        high = right;
      } else if (place >= left) {
        low = left;
      } else {
        return values[place];
      }
    }
    return values[low];
  }

  private static float median(float a, float b, float c) {
    return Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  }
}
