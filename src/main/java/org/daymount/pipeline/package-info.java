/**
 * The story in one method ({@link org.daymount.pipeline.MonthMaker}): the only place that knows the
 * order.
 */
package org.daymount.pipeline;
