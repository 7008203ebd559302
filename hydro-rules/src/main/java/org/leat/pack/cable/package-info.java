/** Rules of the runs between the parts. */
@NullMarked
package org.leat.pack.cable;

import org.jspecify.annotations.NullMarked;
