/** Which part of a picture is printed in a piece, and how large. */
package org.daymount.crop;
