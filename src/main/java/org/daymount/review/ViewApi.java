package org.daymount.review;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;

/**
 * What one view of the page asks for besides the month: all addresses {@code /api/NAME} and {@code
 * /api/NAME/…}, where NAME is what it is entered under in {@link ApiHandler}. Whoever asks has
 * shown the token already. May be asked from several threads.
 */
interface ViewApi {
  /**
   * What GET shows; changes nothing.
   *
   * @param rest what follows NAME/ in the address; empty for NAME alone
   * @param now the month as it stands
   * @throws HttpException with NOT_FOUND for a rest that names nothing
   */
  Object show(String rest, Editing.Now now) throws HttpException, IOException;

  /**
   * What POST changes.
   *
   * @param body as JSON, at most as long as {@link WebExchange} takes
   * @return what is to be shown then
   */
  default Object change(String rest, JsonNode body, Editing.Now now)
      throws HttpException, IOException {
    throw new HttpException(HttpException.WRONG_METHOD, "this address takes GET only");
  }
}
