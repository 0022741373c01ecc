package org.daymount.crop;

/** A stretch along one axis of a picture, in pixels; {@code end} is the first pixel outside. */
record Extent(int start, int end) {}
