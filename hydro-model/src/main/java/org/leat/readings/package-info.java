/**
 * The plant at the water: what a careful first start reads and when to stop, readings taken back and set against what was
 * expected, what is wrong, what a year of readings says. Uses the plant; knows no file and no rule.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.readings;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
