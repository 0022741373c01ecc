/** One class per command; words for a person, and exit codes. */
package org.daymount.cli;
