package org.daymount.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;

/**
 * What a command takes from the computer it runs on: everything that is read from outside comes in
 * here, so that a test can set it.
 *
 * @param out what was asked for
 * @param err progress, warnings and errors
 * @param terminal whether a person is watching
 * @param today for telling dates that cannot be true yet
 * @param zone for the file's own time, when nothing better is known
 * @param here the working directory
 */
record Surroundings(
    PrintWriter out,
    PrintWriter err,
    boolean terminal,
    LocalDate today,
    ZoneId zone,
    Locale locale,
    Path here) {}
