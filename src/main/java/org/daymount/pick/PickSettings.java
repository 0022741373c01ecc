package org.daymount.pick;

import org.daymount.crop.CropSettings;

/** What the picking needs to know beyond the pictures. */
public record PickSettings(CropSettings crop) {}
