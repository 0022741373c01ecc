/**
 * The month in the browser of this computer. The only place that writes choices.json; the only one
 * that opens a port, and that on the loopback address alone.
 */
package org.daymount.review;
