/** A value that is computed when it is first asked for. Uses nothing; for the packages of this module alone. */
@NullMarked
package org.leat.lazy;

import org.jspecify.annotations.NullMarked;
