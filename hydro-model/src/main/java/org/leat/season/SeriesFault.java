package org.leat.season;

/**
 * One thing wrong with a series of flows.
 *
 * @param line in the file, from 1 on
 * @param what is wrong, with what was found and what to write
 */
public record SeriesFault(int line, String what) {}
