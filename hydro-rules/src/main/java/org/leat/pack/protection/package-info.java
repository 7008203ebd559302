/** Rules of fuses, switches, earthing and what can be touched. */
@NullMarked
package org.leat.pack.protection;

import org.jspecify.annotations.NullMarked;
