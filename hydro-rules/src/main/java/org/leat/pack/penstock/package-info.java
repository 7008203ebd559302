/** Rules of the pipe between intake and nozzles. */
@NullMarked
package org.leat.pack.penstock;

import org.jspecify.annotations.NullMarked;
