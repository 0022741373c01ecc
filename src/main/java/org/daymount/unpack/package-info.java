/** What libraries can load from a file only, unpacked to a folder of the user's own and checked. */
package org.daymount.unpack;
