/** Rules of the diode bridge. */
@NullMarked
package org.leat.pack.rectifier;

import org.jspecify.annotations.NullMarked;
