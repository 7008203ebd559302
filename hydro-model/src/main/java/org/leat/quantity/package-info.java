/**
 * Quantities as the trade writes them: the kinds and units a design file knows on top of JSR-385, read from text and
 * printed without any locale. Uses Indriya for the types only; conversion is exact decimal arithmetic of our own.
 */
@NullMarked
package org.leat.quantity;

import org.jspecify.annotations.NullMarked;
