/** Rules of the inverter. */
@NullMarked
package org.leat.pack.inverter;

import org.jspecify.annotations.NullMarked;
