package org.leat.check;

/**
 * A level changed by settings.
 *
 * @param level of a rule's ordinary failure; its worse and milder cases move by as many steps
 * @param grounds who says so and why
 */
public record LevelChange(Level level, Grounds grounds) {}
