package org.leat.choice;

/**
 * How to come by an input.
 *
 * @param sentence what to do, for a person, in one sentence
 */
public record HowToLearn(String sentence) {}
