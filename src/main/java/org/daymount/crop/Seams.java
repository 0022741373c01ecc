package org.daymount.crop;

import java.util.List;
import org.daymount.unit.Length;
import org.daymount.unit.PaperBox;
import org.daymount.unit.PaperSize;

/**
 * Where the parts of a piece meet that is larger than a sheet and printed on several: a 6 x 8 in
 * piece on 4 x 6 in sheets is joined across its middle.
 */
@FunctionalInterface
public interface Seams {
  /** Every piece is printed in one. */
  Seams NONE = piece -> List.of(PaperBox.at(Length.ZERO, Length.ZERO, piece));

  /**
   * @param piece as it will lie on the page
   * @return its parts, from its top left corner; one when it is printed whole
   */
  List<PaperBox> parts(PaperSize piece);
}
