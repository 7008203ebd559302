/** Rules of the dump load. */
@NullMarked
package org.leat.pack.dump;

import org.jspecify.annotations.NullMarked;
