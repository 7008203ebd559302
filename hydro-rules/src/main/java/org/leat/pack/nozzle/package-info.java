/** Rules of the nozzles and the jets on the wheel. */
@NullMarked
package org.leat.pack.nozzle;

import org.jspecify.annotations.NullMarked;
