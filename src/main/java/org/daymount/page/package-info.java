/** How pages are divided, where things lie on them, and which pages share a leaf. */
package org.daymount.page;
