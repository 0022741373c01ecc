/** What an MP4, MOV or 3GP file says: its picture track, key frames and dates. */
package org.daymount.clip;
