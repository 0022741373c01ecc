/**
 * What each page is to hold: spaces, the month note ({@link org.daymount.album.NoteParser}), what a
 * person changed in the review ({@link org.daymount.album.Choices}), and the plan made of the two
 * ({@link org.daymount.album.AlbumPlanner}). The only package besides month that meets Jackson.
 */
package org.daymount.album;
