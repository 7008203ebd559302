/** Rules of the permanent-magnet machine on the runner's shaft. */
@NullMarked
package org.leat.pack.alternator;

import org.jspecify.annotations.NullMarked;
