package org.leat.check;

import org.apiguardian.api.API;

/**
 * A level changed by settings.
 *
 * @param level of a rule's ordinary failure; its worse and milder cases move by as many steps
 * @param grounds who says so and why
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record LevelChange(Level level, Grounds grounds) {}
