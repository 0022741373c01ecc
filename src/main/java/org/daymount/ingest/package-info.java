/** Files and their metadata to photos and problems; the only place that knows EXIF and XMP. */
package org.daymount.ingest;
