/**
 * What the start page needs of this computer: folders to choose from, what was chosen before, and
 * the invented month to try.
 */
package org.daymount.start;
