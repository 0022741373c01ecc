/** What a run need not find out again, kept beside its files: records by keys, in one file. */
package org.daymount.cache;
