/** Rules of the battery. */
@NullMarked
package org.leat.pack.battery;

import org.jspecify.annotations.NullMarked;
