/**
 * The numbers of a plant in SI: one record for each part, and the reason where a number is missing. Uses the words of the
 * design and of the catalogue and the laws; knows neither how a design becomes numbers nor what is solved with them.
 */
@NullMarked
package org.leat.plant.numbers;

import org.jspecify.annotations.NullMarked;
