package org.daymount.album;

import org.daymount.unit.Length;
import org.daymount.unit.PaperSize;

/**
 * Facts of the trade that the planner takes for granted. Common practice, no source: a small
 * page-a-day album has pages of 6 x 8 in, pockets of 3 x 4 and 4 x 6 in, and one page side a day. A
 * mat is kept at the pocket's size and the picture trimmed to leave 1/8 in of it showing, so a 4 x
 * 6 in mat carries a picture of 3 3/4 x 5 3/4 in. Some people stop before the month ends.
 */
public final class CommonPractice {
  public static final PaperSize PAGE = PaperSize.inches(6, 8);
  public static final PaperSize LARGE_POCKET = PaperSize.inches(4, 6);
  public static final PaperSize SMALL_POCKET = PaperSize.inches(3, 4);
  public static final Length REVEAL = Length.inchFraction(1, 8);

  private CommonPractice() {}
}
