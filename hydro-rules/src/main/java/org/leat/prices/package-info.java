/**
 * Price lists: parts with prices, and which fields of a design each of them sets. Uses the reader of design files; what the parts are
 * worth together is for {@code choice} to find.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.prices;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
