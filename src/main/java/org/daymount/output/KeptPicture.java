package org.daymount.output;

/** A small picture as it is kept for the next run. */
record KeptPicture(byte[] jpeg) {}
