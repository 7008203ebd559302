/** Rules of what all parts on the direct-current bus share. */
@NullMarked
package org.leat.pack.bus;

import org.jspecify.annotations.NullMarked;
