/** A day's story set on cards that are cut out of the sheets like pictures. */
package org.daymount.card;
