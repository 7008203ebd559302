/** Rules of the intake: screen, basin, depth of the inlet, air. */
@NullMarked
package org.leat.pack.intake;

import org.jspecify.annotations.NullMarked;
