/**
 * How sure verdicts are: what stated tolerances and the ranges of assumptions leave open of each compared value, how probably it
 * fails, and which input to learn next. Every number comes of solving the plant again with inputs moved and asking the same
 * rules. Formats no text, and turns no verdict: what is open stays open. Uses the checker; used by reports and the command line.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.sure;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
