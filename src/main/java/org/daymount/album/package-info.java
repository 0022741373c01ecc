/** What a page is to hold: spaces, the words that name them, and what is usual. */
package org.daymount.album;
