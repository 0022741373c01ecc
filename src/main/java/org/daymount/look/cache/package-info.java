/** Measurements of earlier runs in a file that may be deleted at any time. */
package org.daymount.look.cache;
