/** Photos to the days of one month, by the camera's own wall clock. */
package org.daymount.day;
