/**
 * What a person changed in the review ({@link org.daymount.choices.Choices}), and the pages that
 * the note and the choices make together ({@link org.daymount.choices.AlbumPlanner}).
 */
package org.daymount.choices;
