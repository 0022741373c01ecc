package org.daymount.look.detect;

/** Something of a known kind, seen in a place. */
record LabelledDetection(ThingKind kind, Detection spot) {}
