/**
 * Quantities as the trade writes them: the kinds and units a design file knows on top of JSR-385, read from text and
 * printed without any locale. Uses Indriya for the types only; conversion is exact decimal arithmetic of our own.
 */
@API(status = API.Status.STABLE, since = "0.1")
@NullMarked
package org.leat.quantity;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
