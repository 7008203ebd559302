/** Rules of what is run from the plant. */
@NullMarked
package org.leat.pack.loads;

import org.jspecify.annotations.NullMarked;
