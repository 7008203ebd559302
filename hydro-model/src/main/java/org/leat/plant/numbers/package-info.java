/**
 * The numbers of a plant in SI: one record for each part, and the reason where a number is missing. Uses the words of the
 * design and of the catalogue and the laws; knows neither how a design becomes numbers nor what is solved with them.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
