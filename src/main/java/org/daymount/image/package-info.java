/** The only decoder: pictures upright, scaled or by region, in sRGB (IEC 61966-2-1). */
package org.daymount.image;
