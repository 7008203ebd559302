/**
 * The plant as one machine: {@link org.leat.plant.Plant} turns a design into SI numbers with every default written down
 * ({@code derive}, {@code numbers}), and solves it in each situation that matters ({@code solve}, {@code cases}). Uses the
 * design, the catalogue and the laws of water, runner and electricity; knows no file.
 */
@NullMarked
package org.leat.plant;

import org.jspecify.annotations.NullMarked;
