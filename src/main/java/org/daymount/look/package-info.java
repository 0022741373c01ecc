/**
 * What can be measured in a picture's pixels: sharpness, light, fingerprint, where the subject is.
 */
package org.daymount.look;
