/** Rules of what was written: numbers that cannot be meant, and numbers that contradict each other. */
@NullMarked
package org.leat.pack.plausibility;

import org.jspecify.annotations.NullMarked;
