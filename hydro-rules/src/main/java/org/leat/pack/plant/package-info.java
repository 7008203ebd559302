/** Rules of the plant as a whole. */
@NullMarked
package org.leat.pack.plant;

import org.jspecify.annotations.NullMarked;
