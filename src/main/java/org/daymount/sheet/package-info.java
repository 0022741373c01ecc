/** Pieces onto sheets: the fewest sheets, and the straight cuts in the order they are made. */
package org.daymount.sheet;
