/** Files written whole or not at all, and their sums. */
package org.daymount.file;
